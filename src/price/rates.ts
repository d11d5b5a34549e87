import type { Knowledge } from '../pack/knowledge';
import type { Rate } from '../pack/schema/prices';
import { yearsBetween } from './dates';

/** Years within which a rate still tells what a currency was worth. */
const NEAR = 3;

/**
 * An amount in another currency by the newest dated rate not after `asOf` (or the oldest there is), in either
 * direction. Null where no pack gives one.
 */
export function convert(amount: number, from: string, to: string, rates: readonly Rate[], asOf: string): number | null {
  if (from === to) return amount;
  const rate = rateAt(from, to, rates, asOf);
  return rate && amount * rate.times;
}

/** The same for an amount of a day long ago: null where no rate is of within three years of that day. */
export function convertNear(
  amount: number,
  from: string,
  to: string,
  rates: readonly Rate[],
  date: string,
): number | null {
  if (from === to) return amount;
  const rate = rateAt(from, to, rates, date);
  return rate && Math.abs(yearsBetween(rate.date, date)) <= NEAR ? amount * rate.times : null;
}

/** What one unit of `from` costs in `to`, and as of when. */
function rateAt(
  from: string,
  to: string,
  rates: readonly Rate[],
  asOf: string,
): { times: number; date: string } | null {
  const fitting = rates
    .filter((rate) => (rate.from === from && rate.to === to) || (rate.from === to && rate.to === from))
    .sort((a, b) => b.date.localeCompare(a.date));
  const rate = fitting.find((one) => one.date <= asOf) ?? fitting.at(-1);
  return rate ? { times: rate.from === from ? rate.rate : 1 / rate.rate, date: rate.date } : null;
}

/** Rates that the user has typed in, then those of all packs. */
export function ratesKnown(typed: readonly Rate[], knowledge: Knowledge): Rate[] {
  return [...typed, ...knowledge.packs.flatMap((pack) => pack.rates)];
}
