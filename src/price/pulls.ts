import { solveTwice } from './least-squares';
import { type Comparable, type PosteriorBand, rowOf } from './posterior-band';
import { fromEven, toEven } from './two-sided';

/**
 * By what each observation multiplies the band's middle: the middle with it over the middle without it, all weights
 * staying as they are. No refit is needed (Belsley, Kuh and Welsch, Regression Diagnostics, 1980, ch. 2: DFBETA).
 * @param observations those that the band was made with, in the same order
 */
export function pullsOf(band: PosteriorBand, observations: readonly Comparable[]): number[] {
  const { coefficients, solved } = band.posterior;
  const kinds = new Map(
    (['asked', 'paid'] as const).map((kind) => {
      const row = rowOf(kind, band.kind);
      const towards = solveTwice(solved.r, row);
      const at = row.reduce((sum, value, j) => sum + value * coefficients[j]!, 0);
      return [kind, { at, middle: towards[0]!, leverage: row.reduce((sum, value, j) => sum + value * towards[j]!, 0) }];
    }),
  );
  const middle = fromEven(coefficients[0]!, band.scale);
  return observations.map(({ kind, price }, i) => {
    const { at, middle: towards, leverage } = kinds.get(kind)!;
    const weight = band.counted[i]!;
    const left = Math.max(1 - weight * leverage, 1e-9);
    const moved = (weight * (toEven(price, band.scale) - at) * towards) / left;
    return middle / fromEven(coefficients[0]! - moved, band.scale);
  });
}
