import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { posterior } from '../../../src/price/conjugate';
import {
  type Before,
  type Comparable,
  priceAt,
  priorOf,
  shareAtMost,
  updated,
} from '../../../src/price/posterior-band';
import { toEven } from '../../../src/price/two-sided';

const BEFORE: Before = { low: 60, mid: 90, high: 150, worth: 5, kind: 'asked' };
const asked = (price: number, weight = 1): Comparable => ({ price, kind: 'asked', weight });
const paid = (price: number, weight = 1): Comparable => ({ price, kind: 'paid', weight });

const befores = fc
  .record({
    mid: fc.double({ min: 1, max: 1e5, noNaN: true }),
    below: fc.double({ min: 1.05, max: 5, noNaN: true }),
    above: fc.double({ min: 1.05, max: 5, noNaN: true }),
    worth: fc.double({ min: 0.05, max: 50, noNaN: true }),
    kind: fc.constantFrom('asked' as const, 'paid' as const),
  })
  .map(({ mid, below, above, worth, kind }) => ({ low: mid / below, mid, high: mid * above, worth, kind }));

const seen = fc.record({
  price: fc.double({ min: 0.01, max: 1e7, noNaN: true }),
  kind: fc.constantFrom('asked' as const, 'paid' as const),
  weight: fc.double({ min: 0.05, max: 1, noNaN: true }),
});

describe('the band after observations', () => {
  it('without any it is the stated band, exactly', () => {
    fc.assert(
      fc.property(befores, (before) => {
        const band = updated(before, []);
        expect(priceAt(band, 0.1) / before.low).toBeCloseTo(1, 9);
        expect(priceAt(band, 0.5) / before.mid).toBeCloseTo(1, 9);
        expect(priceAt(band, 0.9) / before.high).toBeCloseTo(1, 9);
      }),
    );
  });

  it('shares and prices are each other’s inverse', () => {
    fc.assert(
      fc.property(
        befores,
        fc.array(seen, { maxLength: 12 }),
        fc.double({ min: 0.02, max: 0.98, noNaN: true }),
        (before, all, p) => {
          const band = updated(before, all);
          expect(shareAtMost(band, priceAt(band, p))).toBeCloseTo(p, 6);
        },
      ),
    );
  });

  it('the order of the observations does not matter', () => {
    fc.assert(
      fc.property(befores, fc.array(seen, { minLength: 1, maxLength: 12 }), (before, all) => {
        const [one, other] = [updated(before, all), updated(before, [...all].reverse())];
        expect(Math.log(priceAt(one, 0.5) / priceAt(other, 0.5))).toBeCloseTo(0, 6);
      }),
    );
  });

  it('goes to where the prices are, the more of them there are', () => {
    const middle = (n: number) =>
      priceAt(
        updated(
          BEFORE,
          Array.from({ length: n }, () => asked(120)),
        ),
        0.5,
      );
    expect(middle(1)).toBeGreaterThan(90);
    expect(middle(4)).toBeGreaterThan(middle(1));
    expect(Math.abs(middle(200) - 120)).toBeLessThan(2);
  });

  it('takes paid prices for lower than asked ones, and learns by how much', () => {
    const few = updated(BEFORE, [paid(80)]);
    expect(priceAt(few, 0.5, 'paid')).toBeLessThan(priceAt(few, 0.5, 'asked'));
    const many = updated(BEFORE, [...Array(40).fill(asked(100)), ...Array(40).fill(paid(60))]);
    expect(priceAt(many, 0.5, 'paid') / priceAt(many, 0.5, 'asked')).toBeCloseTo(0.6, 1);
  });

  it('a band of paid prices asks for more', () => {
    const band = updated({ ...BEFORE, kind: 'paid' }, []);
    expect(priceAt(band, 0.5)).toBeCloseTo(90, 9);
    expect(priceAt(band, 0.5, 'asked')).toBeGreaterThan(90);
  });

  it('a wild price counts for next to nothing, and not at all differently where it is wilder still', () => {
    const plain = Array.from({ length: 12 }, (_, i) => asked(80 + 3 * i));
    const [without, wild, wilder] = [plain, [...plain, asked(9e4)], [...plain, asked(9e8)]].map((all) =>
      updated(BEFORE, all),
    );
    expect(wild!.counted.at(-1)).toBeLessThan(0.02);
    expect(priceAt(wild!, 0.5) / priceAt(without!, 0.5)).toBeCloseTo(1, 2);
    expect(priceAt(wilder!, 0.9) / priceAt(without!, 0.9)).toBeCloseTo(1, 2);
  });

  it('several wild ones together do not hide each other', () => {
    const plain = Array.from({ length: 20 }, (_, i) => asked(75 + 2 * i));
    const band = updated(BEFORE, [...plain, asked(4000), asked(4500), asked(3)]);
    expect(Math.max(...band.counted.slice(20))).toBeLessThan(0.05);
  });

  it('without the robust step is the conjugate update, price by price', () => {
    fc.assert(
      fc.property(befores, fc.array(seen, { minLength: 1, maxLength: 12 }), (before, all) => {
        const { scale, posterior: found } = updated(before, all, { robust: false });
        const direct = posterior(
          priorOf(before, scale),
          all.map(({ kind }) => [1, kind === before.kind ? 0 : 1]),
          all.map(({ price }) => toEven(price, scale)),
          all.map(({ weight }) => weight),
        )!;
        for (const at of [0, 1]) {
          const [one, other] = [found.coefficients[at]!, direct.coefficients[at]!];
          expect(Math.abs(one - other)).toBeLessThan(1e-9 * Math.max(1, Math.abs(other)));
        }
        expect(found.variance / direct.variance).toBeCloseTo(1, 9);
        expect(found.freedom).toBeCloseTo(direct.freedom, 9);
      }),
    );
  });

  it('without the robust step every price counts by its weight alone', () => {
    const all = [asked(80), asked(9e4, 0.5), paid(70)];
    expect(updated(BEFORE, all, { robust: false }).counted).toEqual([1, 0.5, 1]);
  });
});
