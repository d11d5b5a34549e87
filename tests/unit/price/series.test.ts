import { describe, expect, it } from 'vitest';
import { inMoneyOf, inWeeksOfWage, type Points, valueAt } from '../../../src/price/series';

const POINTS: Points = [
  ['1950', 10],
  ['1960-06', 20],
  ['1970-01-15', 40],
];

describe('a series in time', () => {
  it.each([
    ['1949', null],
    ['1950', 10],
    ['1950-01-01', 10],
    ['1960-05-31', 10],
    ['1960-06-30', 20],
    ['1970-01-14', 20],
    ['1970-01-15', 40],
    ['2026-11-25', 40],
  ])('on %s stands at %s', (date, value) => expect(valueAt(POINTS, date)).toBe(value));

  it('brings an amount into the money of another date', () => {
    expect(inMoneyOf(5, POINTS, '1950', '1970-02')).toBe(20);
    expect(inMoneyOf(5, POINTS, '1970-02', '1950')).toBe(1.25);
    expect(inMoneyOf(5, POINTS, '1940', '1970')).toBeNull();
  });

  it('counts weeks of the wage of that date', () => {
    expect(inWeeksOfWage(50, POINTS, '1951')).toBe(5);
    expect(inWeeksOfWage(50, POINTS, '1900')).toBeNull();
  });
});
