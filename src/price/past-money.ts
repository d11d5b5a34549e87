import type { Knowledge } from '../pack/knowledge';
import { MOST_AMOUNT } from './observation';
import { inMoneyOf, inWeeksOfWage } from './series';
import { type SeriesKnown, seriesOf } from './series-of';

/** What a price of the past comes to. */
export interface PastMoney {
  amount: number;
  currency: string;
  /** ISO 8601, as far as it is known. */
  date: string;
  /** In the money of the day, by a price index; null where no index reaches back so far. */
  today: { amount: number; index: SeriesKnown } | null;
  /** As so many weeks of an average wage of that time; null where no wage series does. */
  weeks: { number: number; wages: SeriesKnown } | null;
}

/**
 * @param pack the pack whose series are asked first; null: any
 * @returns null for what is no price, or of a date that has not come yet
 */
export function pastMoney(
  { amount, currency, date }: { amount: number; currency: string; date: string },
  pack: string | null,
  asOf: string,
  knowledge: Knowledge,
): PastMoney | null {
  if (!(amount > 0) || !(amount < MOST_AMOUNT) || date > asOf) return null;
  const [index, wages] = [seriesOf('index', currency, pack, knowledge), seriesOf('wages', currency, pack, knowledge)];
  const today = index && inMoneyOf(amount, index.points, date, asOf);
  const weeks = wages && inWeeksOfWage(amount, wages.points, date);
  return {
    ...{ amount, currency, date },
    today: index && today !== null ? { amount: today, index } : null,
    weeks: wages && weeks !== null ? { number: weeks, wages } : null,
  };
}
