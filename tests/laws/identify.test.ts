import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readClaims } from '../../src/claims/read';
import { identify } from '../../src/identify/identify';
import { entropy, expectedInformation } from '../../src/identify/information';
import { logSumExp, normalised } from '../../src/identify/log-space';
import { nextEvidence } from '../../src/identify/next-evidence';
import { orderOf } from '../../src/identify/order';
import { readDraft } from '../../src/listing/draft';
import { compile } from '../../src/pack/compile';
import { demo } from '../unit/audit/support/demo';
import { pack } from './pack-arbitrary/pack';

const shares = (length: number) =>
  fc.array(fc.integer({ min: 0, max: 1000 }), { minLength: length, maxLength: length }).map((weights) => {
    const sum = weights.reduce((a, b) => a + b, 0);
    return weights.map((one) => (sum === 0 ? 1 / length : one / sum));
  });
/** P(y, z | c) for three candidates, two answers to each of two questions. */
const joints = fc.record({ which: shares(3), given: fc.array(shares(4), { minLength: 3, maxLength: 3 }) });

describe('information', () => {
  it('is never negative, and never more than there is to know', () =>
    fc.assert(
      fc.property(joints, ({ which, given }) => {
        const bits = expectedInformation(which, given.flat(), 4);
        expect(bits).toBeGreaterThanOrEqual(0);
        expect(bits).toBeLessThanOrEqual(entropy(which) + 1e-9);
        expect(bits).toBeLessThanOrEqual(2 + 1e-9);
      }),
    ));

  it('the chain rule: two answers tell what the first tells and then the second', () =>
    fc.assert(
      fc.property(joints, ({ which, given }) => {
        const first = given.map((row) => [row[0]! + row[1]!, row[2]! + row[3]!]);
        let chained = expectedInformation(which, first.flat(), 2);
        for (const y of [0, 1]) {
          const chance = which.reduce((sum, share, c) => sum + share * first[c]![y]!, 0);
          if (chance === 0) continue;
          const after = which.map((share, c) => (share * first[c]![y]!) / chance);
          const second = given.map((row, c) =>
            first[c]![y]! === 0 ? [0.5, 0.5] : [row[2 * y]! / first[c]![y]!, row[2 * y + 1]! / first[c]![y]!],
          );
          chained += chance * expectedInformation(after, second.flat(), 2);
        }
        expect(expectedInformation(which, given.flat(), 4)).toBeCloseTo(chained, 9);
      }),
    ));

  it('an answer that is the same for all tells nothing', () =>
    fc.assert(
      fc.property(shares(3), shares(4), (which, row) => {
        expect(expectedInformation(which, [row, row, row].flat(), 4)).toBeCloseTo(0, 9);
      }),
    ));
});

describe('logarithms of probabilities', () => {
  const logs = fc.array(fc.double({ min: -1e300, max: 1e300, noNaN: true }), { minLength: 1, maxLength: 20 });
  it('at any size: at least the largest, at most that and the log of how many there are', () =>
    fc.assert(
      fc.property(logs, (all) => {
        const sum = logSumExp(all);
        expect(sum).toBeGreaterThanOrEqual(Math.max(...all));
        expect(sum).toBeLessThanOrEqual(Math.max(...all) + Math.log(all.length) + 1e-9);
      }),
    ));
  it('moving all by the same changes no share', () =>
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -50, max: 50, noNaN: true }), { minLength: 1, maxLength: 9 }),
        fc.integer({ min: -100_000, max: 100_000 }),
        (all, by) => {
          const moved = normalised(all.map((one) => one + by));
          normalised(all).forEach((share, i) => {
            expect(moved[i]).toBeCloseTo(share, 7);
          });
        },
      ),
    ));
  it('shares make one whole', () =>
    fc.assert(
      fc.property(logs, (all) => {
        expect(normalised(all).reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
      }),
      // So large that the logarithm of their number is lost beside them.
      { examples: [[[1e300, 1e300, 0]], [[-1e300, -1e300]]] },
    ));
});

describe('the order', () => {
  it('is that of a plain sort', () =>
    fc.assert(
      fc.property(shares(40), (all) => {
        const plain = all.map((_, i) => i).sort((a, b) => all[b]! - all[a]! || a - b);
        expect(orderOf(Float64Array.from(all))).toEqual(plain);
      }),
    ));
});

describe('which one it is', () => {
  const PHRASES = ['cast iron', 'aluminium', 'zigzag', 'class 15', 'hand crank', 'made in 1954', '12 kg', 'drop feed'];
  const NAMES = ['', 'Grindlewade ', 'Grindlewade Cressiter ', 'Grindlewade Wendelow ', 'Ulversholt Q 41 '];
  const attributes = [...demo.attributes.values()].flatMap(({ ref, def }) =>
    def.kind === 'choice' ? [{ ref, values: def.values.map(({ id }) => id as string | boolean) }] : [],
  );
  const answers = fc
    .uniqueArray(fc.constantFrom(...attributes), { selector: ({ ref }) => ref, maxLength: 5 })
    .chain((some) =>
      fc.tuple(...some.map(({ ref, values }) => fc.constantFrom(...values).map((one) => [ref, one] as const))),
    )
    .map((entries): Record<string, string | boolean> => Object.fromEntries(entries));
  const adverts = fc.record({
    name: fc.constantFrom(...NAMES),
    phrases: fc.uniqueArray(fc.constantFrom(...PHRASES)),
    serial: fc.option(fc.constantFrom('KD 318472', 'H2490022', '12345', '1185520 N')),
    answers,
  });
  const of = ({
    name,
    phrases,
    serial,
    answers: seen,
  }: {
    name: string;
    phrases: string[];
    serial: string | null;
    answers: Record<string, string | boolean>;
  }) => {
    const reading = readClaims(
      readDraft({
        ...{
          title: `${name}sewing machine`,
          language: 'en',
          description: phrases.map((one) => `It is ${one}.`).join(' '),
        },
        ...(serial === null ? {} : { serialText: serial }),
      }),
      demo,
    );
    return { reading, asked: { reading, serial: reading.serials[0] ?? null, answers: seen } };
  };

  it('the shares make one whole, and each is one', () =>
    fc.assert(
      fc.property(adverts, (advert) => {
        const { shares: all } = identify(of(advert).asked, demo).posterior;
        expect(all.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
        for (const share of all) expect(share >= 0 && share <= 1).toBe(true);
      }),
      { numRuns: 60 },
    ));

  it('whatever packs say, the shares are numbers and make one whole', () =>
    fc.assert(
      fc.property(pack, fc.nat(), (whole, turn) => {
        const knowledge = compile([whole]);
        const covering = new Set([whole.about.id]);
        const answers = Object.fromEntries(
          [...knowledge.attributes.values()].flatMap(({ ref, def }) => {
            if (def.kind === 'measure') return [];
            return [[ref, def.kind === 'yes-no' ? turn % 2 === 0 : def.values[turn % def.values.length]!.id]];
          }),
        );
        const reading = { ...readClaims(readDraft({ title: 'thing' }), knowledge), covering };
        const { posterior, order } = identify(
          { reading, serial: { normal: 'A1234', stated: true }, answers },
          knowledge,
        );
        expect(posterior.shares.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
        expect(order).toHaveLength(posterior.shares.length);
      }),
      { numRuns: 60 },
    ));

  it('the order of what is claimed and of what was answered doesn’t matter', () =>
    fc.assert(
      fc.property(adverts, fc.nat(), (advert, turn) => {
        const { asked, reading } = of(advert);
        const turned = <T>(list: readonly T[]): T[] => {
          const at = list.length === 0 ? 0 : turn % list.length;
          return [...list.slice(at), ...list.slice(0, at)].reverse();
        };
        const other = {
          ...asked,
          reading: {
            ...reading,
            ...{ values: turned(reading.values), years: turned(reading.years), wordings: turned(reading.wordings) },
            ...{ measures: turned(reading.measures), places: turned(reading.places) },
          },
          answers: Object.fromEntries(turned(Object.entries(asked.answers))),
        };
        expect(Array.from(identify(other, demo).posterior.shares)).toEqual(
          Array.from(identify(asked, demo).posterior.shares),
        );
      }),
      { numRuns: 60 },
    ));

  it('what is asked next has not been answered, and can tell something', () =>
    fc.assert(
      fc.property(adverts, (advert) => {
        const { asked } = of(advert);
        for (const { leaves, bits } of nextEvidence(identify(asked, demo), asked.answers, 5)) {
          expect(asked.answers).not.toHaveProperty([leaves.attribute.ref]);
          expect(bits).toBeGreaterThan(0);
        }
      }),
      { numRuns: 60 },
    ));
});
