import * as fc from 'fast-check';
import { MultinomialNB } from 'ml-naivebayes';
import { describe, expect, it } from 'vitest';
import { FIRM_SHARE, USUAL_SHARE } from '../../src/identify/assumptions';
import { identify } from '../../src/identify/identify';
import { knowledgeOf, readingWith } from '../unit/identify/support/small';

/**
 * Where nothing is named, types alone are possible and the pieces are independent given the type: naive Bayes. The
 * package ml-naivebayes (npm) is an implementation of others'. It answers only which class is likeliest; the log-odds of
 * two classes are found as the change of their priors at which it changes its answer.
 */
const ATTRIBUTES = { a: ['x', 'y'], b: ['x', 'y', 'z'], c: ['x', 'y', 'z', 'w'] } as const;
type Id = keyof typeof ATTRIBUTES;
const IDS = Object.keys(ATTRIBUTES) as Id[];
const FEATURES = IDS.flatMap((id) => ATTRIBUTES[id].map((value) => ({ id, value })));

interface Case {
  /** For each type its number, and for each attribute its value, and whether it only usually has it. */
  types: { number: number; facts: Record<Id, { is: number; usually: boolean }> }[];
  eye: number;
  /** For each attribute what is seen, or null. */
  seen: Record<Id, number | null>;
}

const perId = <T>(each: (id: Id) => fc.Arbitrary<T>) => fc.record({ a: each('a'), b: each('b'), c: each('c') });
const value = (id: Id) => fc.nat(ATTRIBUTES[id].length - 1);
const type = fc.record({
  number: fc.integer({ min: 1000, max: 9_000_000 }),
  facts: perId((id) => fc.record({ is: value(id), usually: fc.boolean() })),
});
const cases: fc.Arbitrary<Case> = fc.record({
  types: fc.array(type, { minLength: 2, maxLength: 6 }),
  eye: fc.double({ min: 0.55, max: 0.98, noNaN: true }),
  seen: perId((id) => fc.option(value(id), { freq: 4 })),
});

/** How often this value is seen of that type: worked out here, the library is given counts in this proportion. */
function chance(one: Case['types'][number], id: Id, seen: number, eye: number): number {
  const count = ATTRIBUTES[id].length;
  const { is, usually } = one.facts[id];
  const firm = usually ? USUAL_SHARE : FIRM_SHARE;
  let sum = 0;
  for (let leaf = 0; leaf < count; leaf++) {
    const has = leaf === is ? firm : (1 - firm) / (count - 1);
    sum += has * (leaf === seen ? eye : (1 - eye) / (count - 1));
  }
  return sum;
}

/** log(P(first) / P(second)) by the library: where its answer turns when the second's prior is raised. */
function oddsOf({ types, eye, seen }: Case, first: number, second: number): number {
  const SAMPLES = 1e6;
  const pair = [types[first]!, types[second]!];
  const set = pair.map((one) =>
    FEATURES.map(({ id, value: what }) => {
      const at = (ATTRIBUTES[id] as readonly string[]).indexOf(what);
      // The library adds one to each count.
      return SAMPLES * chance(one, id, at, eye) - 1;
    }),
  );
  const trained = new MultinomialNB();
  trained.train(set, [0, 1]);
  const { name, conditionalProbability } = trained.toJSON();
  const given = FEATURES.map(({ id, value: what }) => {
    const at = seen[id];
    return Number(at !== null && ATTRIBUTES[id][at] === what);
  });
  const prior = pair.map((one) => Math.log(one.number));
  let low = -60;
  let high = 60;
  for (let i = 0; i < 60; i++) {
    const raised = (low + high) / 2;
    const priorProbability = [[prior[0]!], [prior[1]! + raised]];
    const model = MultinomialNB.load({ name, conditionalProbability, priorProbability });
    if (model.predict([given])[0] === 0) low = raised;
    else high = raised;
  }
  return low;
}

describe('the posterior over types, against ml-naivebayes', () => {
  it('has the library’s log-odds between any two types', () =>
    fc.assert(
      fc.property(cases, (one) => {
        const knowledge = knowledgeOf({
          attributes: ATTRIBUTES,
          trust: { seller: 0.8, eye: one.eye },
          types: one.types.map(({ number, facts }, i) => ({
            ...{ id: `t-${i}`, number, survival: 1 },
            facts: Object.fromEntries(
              IDS.map((id) => [
                id,
                {
                  is: ATTRIBUTES[id][facts[id].is]!,
                  holds: facts[id].usually ? ('usually' as const) : ('always' as const),
                },
              ]),
            ),
          })),
        });
        const answers = Object.fromEntries(
          IDS.flatMap((id) => {
            const at = one.seen[id];
            return at === null ? [] : [[`small/${id}`, ATTRIBUTES[id][at]!]];
          }),
        );
        const { logs } = identify({ reading: readingWith(knowledge, []), serial: null, answers }, knowledge).posterior;
        for (let other = 1; other < one.types.length; other++)
          expect(logs[0]! - logs[other]!).toBeCloseTo(oddsOf(one, 0, other), 6);
      }),
      { numRuns: 60 },
    ));
});
