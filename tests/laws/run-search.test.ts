import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Column } from '../../src/pack/serials/column';
import { RunSearch, runIndexOf } from '../../src/pack/serials/run-search';
import { PATIENCE, TIMES } from './pack-arbitrary/times';

type Span = readonly [first: number, last: number];

const HIGHEST = Number.MAX_SAFE_INTEGER;

/** Numbers that lie close together, or far apart, or in clusters with nothing between, near 0 and near the highest. */
const number = fc.oneof(
  fc.nat(40),
  fc.nat(1_000_000),
  fc.maxSafeNat(),
  fc.nat(200).map((below) => HIGHEST - below),
  fc.tuple(fc.nat(9), fc.nat(30)).map(([cluster, within]) => cluster * 1e12 + within),
);

const span = fc.oneof(
  fc.tuple(number, number).map(([a, b]): Span => [Math.min(a, b), Math.max(a, b)]),
  fc.tuple(number, fc.nat(50)).map(([first, width]): Span => [first, Math.min(HIGHEST, first + width)]),
);

/** As they lie in a table: by first number, of two that begin alike the wider first. */
function inOrder(spans: readonly Span[]): Span[] {
  return [...spans].sort((a, b) => a[0] - b[0] || b[1] - a[1]);
}

function columnsOf(spans: readonly Span[]): { firsts: Column; widths: Column } {
  return {
    firsts: Column.of(spans.map(([first]) => first)),
    widths: Column.of(spans.map(([first, last]) => last - first)),
  };
}

/** Counts how often a number is read from a column. */
class Counted extends Column {
  reads = 0;

  override at(i: number): number {
    this.reads += 1;
    return super.at(i);
  }

  static over({ length, base, data }: Column): Counted {
    return new Counted(length, base, data);
  }
}

describe('a search with its index', PATIENCE, () => {
  const tables = fc.oneof(fc.array(span, { maxLength: 40 }), fc.array(span, { minLength: 100, maxLength: 700 }));

  test('answers as a look at every run does', () => {
    fc.assert(
      fc.property(tables, fc.array(number, { maxLength: 30 }), (some, asked) => {
        const spans = inOrder(some);
        const { firsts, widths } = columnsOf(spans);
        const search = new RunSearch({ firsts, widths, index: runIndexOf(firsts, widths) });
        const places = spans.map((_, i) => i);
        const beside = spans.slice(0, 60).flatMap(([first, last]) => [first - 1, first, last, last + 1]);
        for (const one of [...asked, ...beside]) {
          const holding = places.filter((i) => spans[i]![0] <= one && one <= spans[i]![1]).reverse();
          expect(search.holding(one, 1_000)).toEqual(holding);
          expect(search.holding(one, 3)).toEqual(holding.slice(0, 3));
          expect(search.after(one)).toBe(places.filter((i) => spans[i]![0] <= one).length);
        }
      }),
      { numRuns: 150 * TIMES },
    );
  });

  test('reads few runs, however a table lies: none that does not hold the number is paid for more than once in eight', () => {
    const COUNT = 5_000;
    const shapes: Record<string, (i: number) => Span> = {
      blocks: (i) => [i * 100, i * 100 + 80],
      nested: (i) => [i, 20_000 - i],
      'all at one place but the last': (i) => (i === COUNT - 1 ? [HIGHEST - 5, HIGHEST] : [7, 5_000 - (i % 50)]),
      'one that spans all': (i) => (i === 0 ? [0, 900_000] : [i * 100, i * 100 + 80]),
      'ever shorter, ever later': (i) => [i * 100, i * 100 + COUNT - i],
    };
    fc.assert(
      fc.property(fc.constantFrom(...Object.keys(shapes)), fc.nat(1_000_000), (shape, one) => {
        const spans = inOrder(Array.from({ length: COUNT }, (_, i) => shapes[shape]!(i)));
        const columns = columnsOf(spans);
        const [firsts, widths] = [Counted.over(columns.firsts), Counted.over(columns.widths)];
        const search = new RunSearch({ firsts, widths, index: runIndexOf(firsts, widths) });
        [firsts.reads, widths.reads] = [0, 0];
        const found = search.holding(one, 64).length;
        // The place is found by halves; of each eight with one that holds it all may be looked at, and of the last eight.
        expect(firsts.reads).toBeLessThanOrEqual(Math.log2(COUNT) + 1 + 8 * (found + 1));
        expect(widths.reads).toBeLessThanOrEqual(8 * (found + 1));
      }),
      { numRuns: 100 * TIMES },
    );
  });
});
