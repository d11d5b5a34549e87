import { describe, expect, it } from 'vitest';
import { timeLineOf } from '../../../src/view/time-line';

describe('a time line', () => {
  it('holds every year from its beginning to its end', () => {
    const line = timeLineOf([1903, 1901, 1910]);
    expect([line?.from, line?.to]).toEqual([1901, 1911]);
    const places = [1901, 1903, 1910, 1911].map((year) => line?.at(year) ?? Number.NaN);
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(Math.min(...places)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...places)).toBeLessThanOrEqual(100);
  });

  it.each([
    [[1901], [1901, 1902]],
    [
      [1901, 1904],
      [1901, 1902, 1903, 1904, 1905],
    ],
    [
      [1890, 1955],
      [1900, 1920, 1940],
    ],
  ])('names few, round years: %j', (years, expected) => {
    expect(timeLineOf(years)?.ticks.map(({ year }) => year)).toEqual(expected);
  });

  it('is none without years', () => expect(timeLineOf([])).toBeNull());
});
