import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { minorUnits } from '../../src/quantity/currencies';
import { findLengths, findWeights } from '../../src/quantity/measures';
import { findMoney, readMoney } from '../../src/quantity/money';
import { findSerialShapes, findSerials, normaliseSerial } from '../../src/quantity/serials';
import { findYears } from '../../src/quantity/years';
import type { Span } from '../../src/text/span';
import { TIMES } from './pack-arbitrary/times';
import { text } from './text-arbitraries';

const RUNS = { numRuns: 400 * TIMES };
const options = fc.record({
  currency: fc.constantFrom(null, 'GBP', 'EUR', 'USD', 'CHF', 'SEK', 'JPY', 'KWD', 'HUF', 'XXX', ''),
  language: fc.constantFrom(null, 'en', 'de', 'de-CH', 'fr', 'hu', '', 'x'),
});

const READERS: [name: string, read: (text: string) => readonly (Span & { quote: string })[]][] = [
  ['findMoney', (written) => findMoney(written)],
  ['findWeights', (written) => findWeights(written)],
  ['findLengths', (written) => findLengths(written)],
  ['findYears', findYears],
  ['findSerials', findSerials],
  ['findSerialShapes', findSerialShapes],
];

describe('every reader', () => {
  it.each(READERS)('%s reads any string, quotes it exactly, in order and without overlap', (_, read) => {
    fc.assert(
      fc.property(text, (written) => {
        let end = 0;
        for (const mention of read(written)) {
          expect(mention.quote).toBe(written.slice(mention.start, mention.end));
          expect(mention.quote).not.toBe('');
          expect(mention.start).toBeGreaterThanOrEqual(end);
          end = mention.end;
        }
      }),
      RUNS,
    );
  });

  it.each(READERS)('%s reads the same whatever stands on other lines', (_, read) => {
    fc.assert(
      fc.property(text, (written) => {
        const alone = read(written).map(({ quote }) => quote);
        expect(read(`Abc def.\n\n${written}\n\nGhi jkl.`).map(({ quote }) => quote)).toEqual(alone);
      }),
      RUNS,
    );
  });
});

describe('money', () => {
  it('is a plain decimal string in a currency that exists, or none', () => {
    fc.assert(
      fc.property(text, options, (written, given) => {
        const read = readMoney(written, given);
        for (const money of read ? [read, ...findMoney(written, given)] : findMoney(written, given)) {
          expect(money.amount).toMatch(/^(?:0|[1-9]\d*)(?:\.\d+)?$/);
          if (money.currency !== null) expect(minorUnits(money.currency)).not.toBeNull();
          expect(money.quote).toBe(written.slice(money.start, money.end));
        }
      }),
      RUNS,
    );
  });

  const SIGNS = ['£', '€', 'US$', 'CHF ', 'EUR ', '¥'];
  const amount = fc.tuple(fc.integer({ min: 0, max: 9_999_999 }), fc.integer({ min: 0, max: 99 }));
  const cents = (value: number) => String(value).padStart(2, '0');

  it('written plainly with a sign before it is read as written', () => {
    fc.assert(
      fc.property(amount, fc.constantFrom(...SIGNS), ([whole, part], sign) => {
        expect(readMoney(`${sign}${whole}.${cents(part)}`)?.amount).toBe(`${whole}.${cents(part)}`);
        expect(readMoney(`${sign}${whole},${cents(part)}`)?.amount).toBe(`${whole}.${cents(part)}`);
        expect(findMoney(`${sign}${whole}`)[0]?.amount).toBe(`${whole}`);
      }),
      RUNS,
    );
  });

  it('means the same however thousands are set apart', () => {
    const grouped = (whole: number, mark: string) => String(whole).replace(/\B(?=(?:\d{3})+$)/g, mark);
    fc.assert(
      fc.property(amount, fc.constantFrom(...SIGNS), ([whole, part], sign) => {
        for (const [mark, point] of [
          [',', '.'],
          ['.', ','],
          [' ', ','],
          ["'", '.'],
          ['\u202f', ','],
        ] as const)
          expect(readMoney(`${sign}${grouped(whole, mark)}${point}${cents(part)}`)?.amount).toBe(
            `${whole}.${cents(part)}`,
          );
      }),
      RUNS,
    );
  });
});

describe('measures', () => {
  const PER_KG = { kg: 1, g: 0.001, lb: 0.45359237, oz: 0.45359237 / 16 } as const;

  it('of one number and one unit are their product', () => {
    const unit = fc.constantFrom(...(Object.keys(PER_KG) as (keyof typeof PER_KG)[]));
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9999 }), unit, fc.constantFrom('', ' ', '\u00a0'), (value, name, space) => {
        const [weight] = findWeights(`${value}${space}${name}`);
        expect(weight!.low / (value * PER_KG[name])).toBeCloseTo(1, 10);
        expect(weight!.high).toBe(weight!.low);
      }),
      RUNS,
    );
  });

  it('have ends in order', () => {
    fc.assert(
      fc.property(text, (written) => {
        for (const { low, high } of [...findWeights(written), ...findLengths(written)]) {
          expect(low).toBeLessThanOrEqual(high);
          expect(low).toBeGreaterThanOrEqual(0);
        }
      }),
      RUNS,
    );
  });
});

describe('years', () => {
  it('have ends in order, from 1500 to 2100, and a cue where a kind is known', () => {
    fc.assert(
      fc.property(text, (written) => {
        for (const { from, to, kind, cue } of findYears(written)) {
          expect(from).toBeLessThanOrEqual(to);
          expect(from).toBeGreaterThanOrEqual(1500);
          expect(to).toBeLessThanOrEqual(2100);
          expect(cue === null).toBe(kind === 'unknown');
          if (cue !== null) expect(written).toContain(cue);
        }
      }),
      RUNS,
    );
  });

  it('are all read where they stand alone', () => {
    for (let year = 1500; year <= 2100; year++) expect(findYears(`${year}`)).toMatchObject([{ from: year, to: year }]);
    expect(findYears('1499')).toEqual([]);
    expect(findYears('2101')).toEqual([]);
  });
});

describe('serials', () => {
  it('in plain form stay as they are', () => {
    fc.assert(
      fc.property(text, (written) => {
        const normal = normaliseSerial(written);
        expect(normaliseSerial(normal)).toBe(normal);
        expect(normal).not.toMatch(/[\s./-]/);
      }),
      RUNS,
    );
  });

  const serial = fc.tuple(fc.stringMatching(/^[BDFHJP]{1,2}$/), fc.integer({ min: 10_000, max: 999_999 }));

  it('are read after words for them, however they are set apart', () => {
    fc.assert(
      fc.property(serial, fc.constantFrom('', ' ', '-', '.', '/'), ([letters, digits], joint) => {
        const written = `Serial no. ${letters}${joint}${digits} on the plate`;
        expect(findSerials(written).map(({ normal }) => normal)).toEqual([`${letters}${digits}`]);
        expect(findSerialShapes(written).map(({ normal }) => normal)).toEqual([`${letters}${digits}`]);
      }),
      RUNS,
    );
  });
});
