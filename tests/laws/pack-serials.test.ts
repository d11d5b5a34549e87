import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Scheme } from '../../src/pack/schema/serials';
import { digitRange, numberIn, numberInTable, writtenIn } from '../../src/pack/serial-form';
import { SerialIndex } from '../../src/pack/serial-index';
import type { Run } from '../../src/pack/serials/run';
import { columnsOf, FIVE_DIGITS } from '../unit/pack/support/runs';
import { scheme } from './pack-arbitrary/skeleton';
import { PATIENCE, TIMES } from './pack-arbitrary/times';

type Span = readonly [number, number];

/** Ends from a small line, so that runs nest, touch, overlap and repeat. */
const span: fc.Arbitrary<Span> = fc
  .oneof(
    fc.tuple(fc.nat(60), fc.nat(60)),
    fc.tuple(fc.nat(99_999), fc.nat(99_999)),
    fc.nat(60).map((point): [number, number] => [point, point]),
  )
  .map(([a, b]): Span => [Math.min(a, b), Math.max(a, b)]);

const stamped = (number: number): string => writtenIn(FIVE_DIGITS, number);

/** The answer that nobody doubts: look at every run. */
function naive(spans: readonly Span[], number: number): string[] {
  return spans.flatMap(([first, last], i) => (first <= number && number <= last ? [`p/m${i}`] : []));
}

function models(runs: readonly Run[]): string[] {
  return runs.flatMap((run) => run.models);
}

function isNarrowestFirst(runs: readonly Run[]): boolean {
  const widths = runs.map((run) => run.lastNumber - run.firstNumber);
  return widths.every((width, i) => i === 0 || widths[i - 1]! <= width);
}

describe('SerialIndex.find', PATIENCE, () => {
  test('answers what looking at every run answers', () => {
    const numbers = fc.array(fc.oneof(fc.nat(62), fc.nat(99_999)), { minLength: 1, maxLength: 20 });
    fc.assert(
      fc.property(fc.array(span, { maxLength: 60 }), numbers, (spans, asked) => {
        const index = new SerialIndex([columnsOf(spans)]);
        for (const number of [...asked, ...spans.flat()]) {
          const found = index.find(stamped(number));
          expect(models(found).sort()).toEqual(naive(spans, number).sort());
          expect(isNarrowestFirst(found)).toBe(true);
        }
      }),
      { numRuns: 300 * TIMES },
    );
  });

  test('whatever the order of the table', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(span, { maxLength: 40, selector: ([a, b]) => a * 1e6 + b }),
        fc.nat(62),
        (spans, number) => {
          const ends = (list: readonly Span[]) =>
            new SerialIndex([columnsOf(list)]).find(stamped(number)).map((run) => [run.firstNumber, run.lastNumber]);
          expect(ends([...spans].reverse())).toEqual(ends(spans));
        },
      ),
      { numRuns: 200 * TIMES },
    );
  });

  test('whatever other packs say beside it', () => {
    fc.assert(
      fc.property(
        fc.array(span, { maxLength: 20 }),
        fc.array(span, { maxLength: 400 }),
        fc.nat(62),
        (ours, theirs, number) => {
          const beside = new SerialIndex([columnsOf(theirs, 'q'), columnsOf(ours)]).find(stamped(number));
          expect(models(beside.filter((run) => run.pack === 'p')).sort()).toEqual(naive(ours, number).sort());
        },
      ),
      { numRuns: 100 * TIMES },
    );
  });

  test('of more than 64 the narrowest, as long as no more than 256 hold the number', () => {
    const around = fc.tuple(fc.nat(500), fc.nat(500)).map(([before, after]): Span => [5000 - before, 5000 + after]);
    fc.assert(
      fc.property(fc.array(around, { minLength: 65, maxLength: 256 }), (spans) => {
        const widths = new SerialIndex([columnsOf(spans)])
          .find(stamped(5000))
          .map((run) => run.lastNumber - run.firstNumber);
        expect(widths).toEqual(
          spans
            .map(([first, last]) => last - first)
            .sort((a, b) => a - b)
            .slice(0, 64),
        );
      }),
      { numRuns: 50 * TIMES },
    );
  });

  test('of any number 64 that do hold it', () => {
    const nested = fc
      .integer({ min: 257, max: 3000 })
      .map((count) => Array.from({ length: count }, (_, i): Span => [i, 20_000 - i]));
    fc.assert(
      fc.property(nested, (spans) => {
        const found = new SerialIndex([columnsOf(spans)]).find(stamped(10_000));
        expect(found).toHaveLength(64);
        expect(naive(spans, 10_000)).toEqual(expect.arrayContaining(models(found)));
        expect(isNarrowestFirst(found)).toBe(true);
      }),
      { numRuns: 20 * TIMES },
    );
  });
});

describe('a number and how it is written', PATIENCE, () => {
  const withNumber = scheme.chain((one: Scheme) =>
    fc.tuple(
      fc.constant(one),
      fc.integer({ min: 0, max: Math.min(10 ** digitRange(one)[1] - 1, Number.MAX_SAFE_INTEGER) }),
    ),
  );

  test('what is stamped is read back as that number, whole or as a table prints it', () => {
    const gaps = fc.array(fc.constantFrom('', '', ' ', '-', '.', '/'), { minLength: 40, maxLength: 40 });
    fc.assert(
      fc.property(withNumber, gaps, fc.boolean(), ([one, number], gap, lower) => {
        const written = writtenIn(one, number);
        expect(numberIn(one, written)).toBe(number);
        const spaced = [...written].map((character, i) => character + gap[i]).join('');
        expect(numberInTable(one, lower ? spaced.toLowerCase() : spaced)).toBe(number);
      }),
      { numRuns: 1000 * TIMES },
    );
  });

  test('the digits alone are that number too, where the scheme has letters or nothing around them', () => {
    fc.assert(
      fc.property(withNumber, ([one, number]) => {
        const around = one.prefix + (one.suffix ?? '');
        fc.pre(around === '' || /[A-Z]/.test(around));
        expect(numberInTable(one, String(number))).toBe(number);
      }),
      { numRuns: 500 * TIMES },
    );
  });

  test('what is read is written as it was, but for leading zeros beyond the least width', () => {
    fc.assert(
      fc.property(scheme, fc.stringMatching(/^[0-9]{1,16}$/), (one, digits) => {
        const normal = `${one.prefix}${digits}${one.suffix ?? ''}`;
        const number = numberIn(one, normal);
        fc.pre(number !== null);
        const [least] = digitRange(one);
        const zerosGone = digits.replace(/^0+(?=[0-9])/, '').padStart(least, '0');
        expect(writtenIn(one, number)).toBe(`${one.prefix}${zerosGone}${one.suffix ?? ''}`);
      }),
      { numRuns: 1000 * TIMES },
    );
  });

  test('no text is read as a number beyond the scheme', () => {
    fc.assert(
      fc.property(scheme, fc.oneof(fc.string(), fc.stringMatching(/^[A-Z0-9]{0,20}$/)), (one, written) => {
        for (const number of [numberIn(one, written), numberInTable(one, written)]) {
          if (number === null) continue;
          expect(Number.isSafeInteger(number)).toBe(true);
          expect(number).toBeLessThan(10 ** digitRange(one)[1]);
        }
      }),
      { numRuns: 2000 * TIMES },
    );
  });
});
