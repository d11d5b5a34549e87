import { describe, expect, it } from 'vitest';
import { Column } from '../../../../src/pack/serials/column';
import { RunSearch, runIndexOf } from '../../../../src/pack/serials/run-search';

type Span = [first: number, last: number];

function searchOf(spans: Span[]): RunSearch {
  const firsts = Column.of(spans.map(([first]) => first));
  const widths = Column.of(spans.map(([first, last]) => last - first));
  return new RunSearch({ firsts, widths, index: runIndexOf(firsts, widths) });
}

/** Blocks of ten, one after the other, as long as several levels of the tree take. */
const blocks = (count: number) => Array.from({ length: count }, (_, i): Span => [i * 10, i * 10 + 8]);

describe.each([0, 1, 15, 16, 17, 255, 256, 257, 4095, 4096, 4097, 70_000])('of %i runs', (count) => {
  const search = searchOf(blocks(count));

  it('finds each by its ends, and none in the gaps', () => {
    for (let i = 0; i < count; i += Math.max(1, Math.floor(count / 500))) {
      expect(search.holding(i * 10, 9)).toEqual([i]);
      expect(search.holding(i * 10 + 8, 9)).toEqual([i]);
      expect(search.holding(i * 10 + 9, 9)).toEqual([]);
    }
    expect(search.holding(count * 10, 9)).toEqual([]);
    expect(search.after(-1)).toBe(0);
    expect(search.after(count * 10)).toBe(count);
  });
});

it('finds a wide run that begins long before, whatever stands between', () => {
  const spans: Span[] = [[0, 1_000_000], ...blocks(5_000).map(([first, last]): Span => [first + 1, last + 1])];
  expect(searchOf(spans).holding(49_995, 9)).toEqual([5_000, 0]);
});

it('gives those that begin last where more hold the number than are wanted', () => {
  const nested = Array.from({ length: 1_000 }, (_, i): Span => [i, 5_000 - i]);
  expect(searchOf(nested).holding(1_500, 3)).toEqual([999, 998, 997]);
});
