import type { Knowledge } from '../pack/knowledge';
import type { Rate } from '../pack/schema/prices';
import { yearsBetween } from './dates';

/** Years within which a rate still tells what a currency was worth. */
const NEAR = 3;

/** A dated rate and the pack that states it; null where the user has typed it in. */
export interface RateKnown extends Rate {
  pack: string | null;
}

/** How one currency was turned into another: what one unit cost, on which date, and who says so. */
export interface Conversion {
  times: number;
  date: string;
  pack: string | null;
}

/**
 * By the newest dated rate not after `asOf` (or the oldest there is), in either direction.
 * @returns null where none is known
 */
export function conversion(from: string, to: string, rates: readonly RateKnown[], asOf: string): Conversion | null {
  const fitting = rates
    .filter((rate) => (rate.from === from && rate.to === to) || (rate.from === to && rate.to === from))
    .sort((a, b) => b.date.localeCompare(a.date));
  const rate = fitting.find((one) => one.date <= asOf) ?? fitting.at(-1);
  return rate ? { times: rate.from === from ? rate.rate : 1 / rate.rate, date: rate.date, pack: rate.pack } : null;
}

/** An amount in another currency; null where no rate is known. */
export function convert(
  amount: number,
  from: string,
  to: string,
  rates: readonly RateKnown[],
  asOf: string,
): number | null {
  if (from === to) return amount;
  const by = conversion(from, to, rates, asOf);
  return by && amount * by.times;
}

/** The same for an amount of a day long ago: null where no rate is of within three years of that day. */
export function convertNear(
  amount: number,
  from: string,
  to: string,
  rates: readonly RateKnown[],
  date: string,
): number | null {
  if (from === to) return amount;
  const by = conversion(from, to, rates, date);
  return by && Math.abs(yearsBetween(by.date, date)) <= NEAR ? amount * by.times : null;
}

/** Rates that the user has typed in, then those of all packs. */
export function ratesKnown(typed: readonly Rate[], knowledge: Knowledge): RateKnown[] {
  return [
    ...typed.map((rate) => ({ ...rate, pack: null })),
    ...knowledge.packs.flatMap(({ id, rates }) => rates.map((rate) => ({ ...rate, pack: id }))),
  ];
}
