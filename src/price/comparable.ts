import type { Rate } from '../pack/schema/prices';
import type { Comparable } from './posterior-band';
import { convert } from './rates';
import { inMoneyOf, type Points } from './series';

/** A price that somebody saw. */
export interface Observation {
  /** packId/modelId */
  model: string;
  kind: 'asked' | 'paid';
  amount: number;
  currency: string;
  /** ISO 8601, as far as it is known: a year, a month or a day. */
  date: string;
  grade?: string | undefined;
  finish?: 'plain' | 'refinished' | undefined;
}

/** What prices are to be compared with. */
export interface Wanted {
  model: string;
  grade: string | null;
  finish: 'plain' | 'refinished';
  currency: string;
  /** ISO 8601 date. */
  asOf: string;
}

export interface PriceKnowledge {
  rates: readonly Rate[];
  /** Price index of the wanted currency, or null. */
  index: Points | null;
  /** The stated median of a model in a grade, in one currency; null where none is stated. */
  mid: (model: string, grade: string | null) => number | null;
}

/** Why an observation says nothing here. */
export type LeftOut = 'future' | 'no-rate' | 'finish' | 'another-model' | 'another-grade' | 'amount';

/** Years after which a price counts half: with an index, and without one to bring it to today's money. */
const HALF_LIFE = { indexed: 8, plain: 4 };
/** Another grade, brought to this one by the ratio of the stated medians. */
const OTHER_GRADE = 0.5;
/** No grade said. */
const NO_GRADE = 0.7;
/** A sister model, brought to this one in the same way. */
const SISTER = 0.3;
/** Below this an observation is left out rather than counted. */
const LEAST = 0.01;

/**
 * An observation as a price of today's money in the wanted currency, with a weight by its age and likeness. The weights
 * are common practice, no source: an old price, another grade's or a sister's tells less.
 */
export function comparable(
  seen: Observation,
  wanted: Wanted,
  known: PriceKnowledge,
): Comparable | { leftOut: LeftOut } {
  if (!(seen.amount > 0) || !Number.isFinite(seen.amount)) return { leftOut: 'amount' };
  if (seen.date > wanted.asOf) return { leftOut: 'future' };
  // A repainted machine is another thing to buy than a plain one.
  if ((seen.finish ?? 'plain') !== wanted.finish) return { leftOut: 'finish' };
  const converted = convert(seen.amount, seen.currency, wanted.currency, known.rates, seen.date);
  if (converted === null) return { leftOut: 'no-rate' };
  const likened = likeness(seen, wanted, known);
  if ('leftOut' in likened) return likened;
  const indexed = known.index ? inMoneyOf(converted, known.index, seen.date, wanted.asOf) : null;
  const age = Math.max(0, yearsBetween(seen.date, wanted.asOf));
  const weight = likened.weight * 0.5 ** (age / (indexed === null ? HALF_LIFE.plain : HALF_LIFE.indexed));
  return { price: (indexed ?? converted) * likened.times, kind: seen.kind, weight: Math.max(weight, LEAST) };
}

function likeness(
  seen: Observation,
  wanted: Wanted,
  { mid }: PriceKnowledge,
): { times: number; weight: number } | { leftOut: LeftOut } {
  const grade = seen.grade ?? wanted.grade;
  const sameModel = seen.model === wanted.model;
  const sameGrade = grade === wanted.grade;
  const weight = (sameModel ? 1 : SISTER) * (sameGrade ? 1 : OTHER_GRADE) * (seen.grade === undefined ? NO_GRADE : 1);
  if (sameModel && sameGrade) return { times: 1, weight };
  const [here, there] = [mid(wanted.model, wanted.grade), mid(seen.model, grade)];
  if (here !== null && there !== null) return { times: here / there, weight };
  return { leftOut: sameModel ? 'another-grade' : 'another-model' };
}

/** Whole and broken years between two dates; a date known by its year or month alone stands at the middle of it. */
function yearsBetween(from: string, to: string): number {
  return yearOf(to) - yearOf(from);
}

function yearOf(date: string): number {
  const [year, month, day] = date.split('-').map(Number);
  if (month === undefined) return year! + 0.5;
  return year! + (month - 1) / 12 + (day === undefined ? 0.5 / 12 : (day - 1) / 365.25);
}
