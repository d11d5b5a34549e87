import { describe, expect, it } from 'vitest';
import { inMoneyOf, type Points } from '../../src/price/series';

/**
 * The consumer price index for all urban consumers of the United States (CPI-U, annual average, 1982-84 = 100), as
 * published by the Bureau of Labor Statistics; from memory. No registry that we know carries the series as open data.
 */
const CPI_U: Points = [
  ['1950', 24.1],
  ['1960', 29.6],
  ['1970', 38.8],
  ['1980', 82.4],
  ['1990', 130.7],
  ['2000', 172.2],
  ['2010', 218.056],
  ['2020', 258.811],
];

/** What 100 dollars of the one year bought in the other, by the Bureau's rule: amount times index over index. */
const WORTH: [from: string, to: string, dollars: number][] = [
  ['1950', '2020', 1073.9],
  ['1970', '2000', 443.81],
  ['1980', '2000', 208.98],
  ['1980', '2020', 314.09],
  ['2020', '1950', 9.31],
];

describe('money through time, by the consumer price index of the United States', () => {
  it.each(WORTH)('100 dollars of %s are in %s: %d', (from, to, dollars) =>
    expect(inMoneyOf(100, CPI_U, from, to)).toBeCloseTo(dollars, 1),
  );
  it('before the series begins nothing is said', () => expect(inMoneyOf(100, CPI_U, '1949', '2020')).toBeNull());
});
