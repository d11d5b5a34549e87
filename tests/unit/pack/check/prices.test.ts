import { describe, expect, test } from 'vitest';
import type { Prices } from '../../../../src/pack/schema/prices';
import { accepted, issuesOf, smallPack } from '../support/packs';

function withPrices(prices: Prices) {
  return smallPack({ models: [{ id: 'm', label: 'M', names: [] }], prices });
}

function withBand(low: number, high: number, mid?: number) {
  const band = { model: 'm', low, high, currency: 'GBP', date: '2026', ...(mid === undefined ? {} : { mid }) };
  return withPrices({ bands: [band] });
}

describe('a band', () => {
  test.each([
    [40, 120, undefined],
    [40, 120, 40],
    [40, 120, 120],
    [0.01, 0.02, undefined],
    [1e200, 1e201, undefined],
    [1e-200, 1e-199, undefined],
  ])('from %d to %d, mid %s, is in order', (low, high, mid) => {
    accepted(withBand(low, high, mid));
  });

  test.each([
    [120, 40],
    [40, 40],
  ])('from %d to %d is not', (low, high) => {
    expect(issuesOf(withBand(low, high))).toEqual([
      { path: 'prices.bands[0]', what: `${low} to ${high}`, expected: 'low below high' },
    ]);
  });

  test.each([39, 121])('with its middle at %d, outside of it, is not', (mid) => {
    expect(issuesOf(withBand(40, 120, mid))).toEqual([
      { path: 'prices.bands[0].mid', what: `${mid} is there`, expected: 'no less than 40 and no more than 120' },
    ]);
  });

  test.each([0, -5])('a price of %d is none', (low) => {
    expect(issuesOf(withBand(low, 40))).toEqual([
      { path: 'prices.bands[0].low', what: `${low} is there`, expected: 'more than 0' },
    ]);
  });
});

describe('a series', () => {
  const withPoints = (...dates: string[]) =>
    withPrices({ index: [{ currency: 'GBP', label: 'x', points: dates.map((date): [string, number] => [date, 1]) }] });

  test('runs from the oldest point on', () => {
    accepted(withPoints('1950', '1950-01', '1950-01-02', '1951'));
  });

  test.each([
    ['1951', '1950'],
    ['1951', '1951'],
    ['1951-02', '1951-01-31'],
  ])('%s and then %s is not in order', (before, after) => {
    expect(issuesOf(withPoints(before, after))).toEqual([
      {
        path: 'prices.index[0].points[1]',
        what: `${before} to ${after}`,
        expected: 'points in time, the oldest first, each once',
      },
    ]);
  });
});
