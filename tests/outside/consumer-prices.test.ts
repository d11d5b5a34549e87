import { describe, expect, it } from 'vitest';
import { inMoneyOf, type Points } from '../../src/price/series';

/**
 * The consumer price index for all urban consumers of the United States (CPI-U, annual average, 1982-84 = 100), as
 * published by the Bureau of Labor Statistics; from memory, and held below against a data set that carries it by quarters.
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

/**
 * The same index at the end of quarters, seasonally adjusted, with the inflation that its compiler worked out from it
 * (400 times the logarithm of one quarter's over the last one's): columns "cpi" and "infl" of the public domain data set
 * macrodata in the Python package statsmodels 0.15.0, which names the Federal Reserve Bank of St. Louis as its source.
 */
const QUARTERS: [date: string, index: number, inflation: number][] = [
  ['1973-03', 43.7, 9.26],
  ['1973-06', 44.2, 4.55],
  ['1973-09', 45.6, 12.47],
  ['1973-12', 46.8, 10.39],
  ['1974-03', 48.1, 10.96],
  ['1974-06', 49.3, 9.86],
  ['1974-09', 51.0, 13.56],
  ['1974-12', 52.3, 10.07],
  ['1980-03', 80.9, 14.6],
  ['1980-06', 82.6, 8.32],
  ['1980-09', 84.7, 10.04],
  ['1980-12', 87.2, 11.64],
  ['2008-03', 213.997, 2.82],
  ['2008-06', 218.61, 8.53],
  ['2008-09', 216.889, -3.16],
  ['2008-12', 212.174, -8.79],
  ['2009-03', 212.671, 0.94],
  ['2009-06', 214.469, 3.37],
  ['2009-09', 216.385, 3.56],
];

describe('money through time, by the quarters of a public data set', () => {
  const points: Points = QUARTERS.map(([date, index]) => [date, index]);
  const steps = QUARTERS.slice(1).flatMap(([date, , inflation], i) => {
    const before = QUARTERS[i]![0];
    const apart =
      (Number(date.slice(0, 4)) - Number(before.slice(0, 4))) * 12 + Number(date.slice(5)) - Number(before.slice(5));
    return apart === 3 ? [{ before, date, inflation }] : [];
  });

  it('has quarters that follow each other', () => expect(steps.length).toBe(16));

  it.each(steps)('from $before to $date prices rose by $inflation % a year', ({ before, date, inflation }) => {
    expect(400 * Math.log(inMoneyOf(1, points, before, date)!)).toBeCloseTo(inflation, 1);
  });

  it('a day within a quarter has the index of the quarter before it', () =>
    expect(inMoneyOf(100, points, '1974-08-15', '2009-09')).toBeCloseTo((100 * 216.385) / 49.3, 9));

  it('the yearly figures from memory are those of the quarters, as far as an average is like an end', () => {
    const end = new Map(QUARTERS.map(([date, index]) => [date, index]));
    const year = 1980;
    const mean = ['03', '06', '09', '12'].reduce((sum, month) => sum + end.get(`${year}-${month}`)! / 4, 0);
    expect(Math.abs(Math.log(mean / CPI_U.find(([at]) => at === String(year))![1]))).toBeLessThan(0.02);
  });
});
