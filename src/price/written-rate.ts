import type { Rate } from '../pack/schema/prices';
import { minorUnits } from '../quantity/currencies';
import { dateOf } from './written-date';

export const RATE_FIELDS = ['from', 'rate', 'to', 'date'] as const;
export type RateField = (typeof RATE_FIELDS)[number];

/** A rate as somebody writes it: one unit of `from` cost `rate` units of `to` on that date. "" for what isn't said. */
export type WrittenRate = Record<RateField, string>;

export const NO_RATE_WRITTEN: WrittenRate = { from: '', rate: '', to: '', date: '' };

export interface RateProblem {
  field: RateField;
  wrong: 'missing' | 'unknown' | 'same' | 'form' | 'too-low' | 'too-high' | 'future';
}

/** No two currencies are further apart; what is beyond is a slip. */
const MOST_RATE = 1e9;
/** "0.86" and "0,86". Three digits after a comma may be thousands, so that they are none. */
const NUMBER = /^-?\d+(?:\.\d+|,(?:\d{1,2}|\d{4,}))?$/;

/**
 * A rate from what is written of it.
 * @param today ISO 8601 date: no rate is of a later day
 * @returns every field with which something is wrong, if any is
 */
export function writtenRate(
  written: WrittenRate,
  today: string,
): { ok: true; rate: Rate } | { ok: false; problems: RateProblem[] } {
  const problems: RateProblem[] = [];
  const wrong = (field: RateField, what: RateProblem['wrong']): null => {
    problems.push({ field, wrong: what });
    return null;
  };
  const currency = (field: 'from' | 'to'): string | null => {
    const code = written[field].trim().toUpperCase();
    if (code === '') return wrong(field, 'missing');
    return minorUnits(code) === null ? wrong(field, 'unknown') : code;
  };
  const from = currency('from');
  const rate = numberOf(written.rate.trim(), (what) => wrong('rate', what));
  const to = currency('to');
  if (from !== null && from === to) wrong('to', 'same');
  const day = written.date.trim();
  const date = day === '' ? wrong('date', 'missing') : (dateOf(day) ?? wrong('date', 'form'));
  if (date !== null && date > today) wrong('date', 'future');
  if (problems.length > 0 || from === null || to === null || rate === null || date === null)
    return { ok: false, problems };
  return { ok: true, rate: { from, to, rate, date } };
}

function numberOf(written: string, wrong: (what: RateProblem['wrong']) => null): number | null {
  if (written === '') return wrong('missing');
  if (!NUMBER.test(written)) return wrong('form');
  const value = Number(written.replace(',', '.'));
  if (!(value > 0)) return wrong('too-low');
  return value < MOST_RATE && value > 1 / MOST_RATE ? value : wrong('too-high');
}
