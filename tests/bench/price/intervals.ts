import studentQuantile from '@stdlib/stats-base-dists-t-quantile';
import { quantileSorted } from 'd3-array';
import Regression from 'ml-regression-multivariate-linear';
import { type Comparable, priceAt, updated } from '../../../src/price/posterior-band';
import { STATED } from './market';

/** An 80 % interval of the next price. */
export interface Interval {
  low: number;
  high: number;
}

/** Ours, from the stated band and what was seen. */
export function ours(seen: readonly number[], robust = true): Interval {
  const band = updated(
    STATED,
    seen.map((price): Comparable => ({ price, kind: 'paid', weight: 1 })),
    { robust },
  );
  return { low: priceAt(band, 0.1), high: priceAt(band, 0.9) };
}

/** An ordinary regression's prediction interval: a constant alone, of logarithms; it takes three prices at least. */
export function regression(seen: readonly number[]): Interval {
  const n = seen.length;
  const fitted = new Regression(
    seen.map(() => [1]),
    seen.map((price) => [Math.log(price)]),
    { intercept: false, statistics: true },
  );
  // Its own standard error is that of one price; of the next one it is wider by the doubt about the place.
  const half = studentQuantile(0.9, n - 1) * fitted.stdError * Math.sqrt(1 + 1 / n);
  const place = fitted.predict([1])[0]!;
  return { low: Math.exp(place - half), high: Math.exp(place + half) };
}

/** What lies between the tenth and the ninetieth hundredth of what was seen: type 7 of Hyndman and Fan 1996. */
export function quantiles(seen: readonly number[]): Interval {
  const sorted = [...seen].sort((a, b) => a - b);
  return { low: quantileSorted(sorted, 0.1)!, high: quantileSorted(sorted, 0.9)! };
}

/**
 * The interval score of Gneiting and Raftery 2007 (section 6.2), on the logarithm of prices: the width, and for a price
 * outside ten times how far outside (2 / 0.2). Less is better.
 */
export function scoreOf({ low, high }: Interval, next: number): number {
  const outside = next < low ? Math.log(low / next) : next > high ? Math.log(next / high) : 0;
  return Math.log(high / low) + 10 * outside;
}
