import type { PriceBand } from './price-band';
import { median } from './quantile';

/** The middle of the prices of one year, in today's money, and how many it is of. */
export interface PriceYear {
  year: string;
  middle: number;
  count: number;
}

/** Fewer prices make no history. */
const LEAST = 10;

/**
 * How the price went over the years, of the band's own kind: what is asked is brought to what is paid, or the other way
 * round.
 * @returns oldest first; empty below ten prices
 */
export function priceYears({ seen, kind, askedToPaid }: PriceBand): PriceYear[] {
  const years = new Map<string, number[]>();
  let count = 0;
  for (const { price, seen: one } of seen) {
    if (price === null) continue;
    const likened = one.kind === kind ? price : kind === 'paid' ? price / askedToPaid : price * askedToPaid;
    const year = one.date.slice(0, 4);
    const there = years.get(year);
    if (there) there.push(likened);
    else years.set(year, [likened]);
    count += 1;
  }
  if (count < LEAST) return [];
  return [...years].sort().map(([year, prices]) => ({ year, middle: median(prices), count: prices.length }));
}
