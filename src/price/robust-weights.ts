import type { Posterior, Prior } from './conjugate';
import { leverage } from './least-squares';

/**
 * How many predictive scales away from what all the others predict a price may lie before it counts for less. Beyond,
 * its weight falls with the fourth power of the distance, so that a wild price has a bounded pull and leaves next to no trace
 * in the spread (after Huber, Robust Estimation of a Location Parameter, 1964, with a redescending weight).
 */
const HELD = 3;

/** The weight that a price so many scales away keeps. */
export function keptAt(away: number): number {
  return away <= HELD ? 1 : (HELD / away) ** 4;
}

/**
 * What each observation keeps of its weight by its distance from where the others put it. Leaving one out costs no
 * refit: its residual grows by its leverage (Belsley, Kuh and Welsch, Regression Diagnostics, 1980, ch. 2).
 * @param given weights by likeness
 * @param counted the weights that the posterior was made with
 */
export function outlierWeights(
  prior: Prior,
  after: Posterior,
  rows: readonly (readonly number[])[],
  even: readonly number[],
  given: readonly number[],
  counted: readonly number[],
): number[] {
  const { coefficients, solved, freedom, variance } = after;
  const placed = new Map(
    [...new Set(rows)].map((row) => {
      const at = row.reduce((sum, value, j) => sum + value * coefficients[j]!, 0);
      return [row, { at, all: leverage(solved.r, row) }];
    }),
  );
  return rows.map((row, i) => {
    const { at, all } = placed.get(row)!;
    const kept = 1 - counted[i]! * all;
    const residual = (even[i]! - at) / kept;
    const othersFreedom = Math.max(freedom - counted[i]!, prior.freedom);
    const square = Math.max(
      freedom * variance - (counted[i]! * (even[i]! - at) ** 2) / kept,
      prior.freedom * prior.variance,
    );
    const scale = Math.sqrt((square / othersFreedom) * (1 / given[i]! + all / kept));
    const away = Math.abs(residual) / scale;
    return keptAt(away);
  });
}
