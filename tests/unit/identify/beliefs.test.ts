import { describe, expect, it } from 'vitest';
import { BELIEF } from '../../../src/identify/assumptions';
import { beliefsOf } from '../../../src/identify/beliefs';
import { fieldOf } from '../../../src/identify/field';
import { knowledgeOf } from './support/small';

const field = fieldOf(
  knowledgeOf({
    attributes: { a: ['x', 'y'] },
    families: ['kin'],
    models: [
      { id: 'm', number: 1000, family: 'kin', type: 't', mistakenFor: [{ model: 'o', rate: 0.2 }] },
      {
        id: 'n',
        number: 3000,
        family: 'kin',
        mistakenFor: [
          { model: 'm', rate: 0.4 },
          { model: 'o', rate: 0.6 },
        ],
      },
      { id: 'o', number: 500 },
    ],
    types: [{ id: 't' }],
  }),
  new Set(['small']),
);
const beliefs = beliefsOf(field);
const at = (id: string): number => field.positionOf(id, 'small') ?? field.hypotheses.length - 1;

/** Every chance of what it is taken for, added up over the groups. */
function whole(m: number): number {
  const { weight, groups, group, groupRate, anyRate, rates, vague, right, nameable } = beliefs;
  let sum = vague[m]! + right[m]!;
  for (const b of nameable) {
    if (b === m) continue;
    sum += anyRate[m]! * weight[b]!;
    if (group[m]! >= 0 && groups[group[m]!]!.includes(b)) sum += groupRate[m]! * weight[b]!;
  }
  return sum + rates[m]!.reduce((all, one) => all + one.rate, 0);
}

describe('for what a seller takes it', () => {
  it('everything that he can take it for makes one whole', () => {
    field.hypotheses.forEach((_, m) => {
      expect(whole(m)).toBeCloseTo(1, 9);
    });
  });
  it('mostly for what it is, or for nothing in particular; types and none have no name', () => {
    expect(beliefs.right[at('m')]! + beliefs.vague[at('m')]!).toBeGreaterThan(0.7);
    expect(beliefs.right[at('t')]).toBe(0);
    expect(beliefs.vague[at('none')]).toBeGreaterThan(0.9);
  });
  it('for another at the rate that the pack states, together no more than half', () => {
    expect(beliefs.rates[at('m')]).toEqual([{ taken: at('o'), rate: 0.2 }]);
    const rates = beliefs.rates[at('n')]!;
    expect(rates.reduce((sum, one) => sum + one.rate, 0)).toBeCloseTo(BELIEF.mistakenMost, 9);
    expect(rates[1]!.rate / rates[0]!.rate).toBeCloseTo(1.5, 9);
  });
  it('a machine of an unknown maker mostly for a model of its own type', () => {
    const own = beliefs.groups[beliefs.group[at('t')]!];
    expect(own).toEqual([at('m')]);
    expect(beliefs.groupRate[at('t')]).toBeGreaterThan(beliefs.anyRate[at('t')]!);
  });
});
