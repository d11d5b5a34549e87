import { quantile as quantileOfD3 } from 'd3-array';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quantile } from '../../src/price/quantile';

/** Quantiles of type 7 (R. J. Hyndman and Y. Fan, 1996) as the npm package d3-array 3.2.5 computes them by default. */
describe('quantiles of type 7', () => {
  it('are those of d3-array', () => {
    const values = fc.array(fc.double({ min: 0.01, max: 1e9, noNaN: true }), { minLength: 1, maxLength: 40 });
    fc.assert(
      fc.property(values, fc.double({ min: 0, max: 1, noNaN: true }), (all, p) => {
        const reference = quantileOfD3(all, p)!;
        expect(Math.abs(quantile(all, p) - reference)).toBeLessThanOrEqual(1e-12 * reference);
      }),
    );
  });

  it('of 1 to 10 the quartiles are 3.25, 5.5 and 7.75, as R prints them (from memory)', () => {
    const all = [10, 3, 1, 7, 5, 2, 9, 8, 6, 4];
    expect([0.25, 0.5, 0.75].map((p) => quantile(all, p))).toEqual([3.25, 5.5, 7.75]);
  });
});
