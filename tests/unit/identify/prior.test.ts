import { describe, expect, it } from 'vitest';
import { SHARES, UNSTATED } from '../../../src/identify/assumptions';
import { fieldOf } from '../../../src/identify/field';
import { knowledgeOf, type Small } from './support/small';

const priors = (small: Omit<Small, 'attributes'>): Record<string, number> => {
  const { hypotheses, logPrior } = fieldOf(
    knowledgeOf({ attributes: { a: ['x', 'y'] }, ...small }),
    new Set(['small']),
  );
  return Object.fromEntries(hypotheses.map(({ model }, h) => [model?.id ?? 'none', Math.exp(logPrior[h]!)]));
};
const sum = (of: Record<string, number>) => Object.values(of).reduce((a, b) => a + b, 0);

describe('how likely each is before anything is known', () => {
  it('models by how many are left', () => {
    const all = priors({
      models: [
        { id: 'm', number: 1000, survival: 0.2 },
        { id: 'n', number: 4000, survival: 0.1 },
      ],
    });
    expect(all.n! / all.m!).toBeCloseTo(2, 9);
    expect(sum(all)).toBeCloseTo(1, 9);
  });
  it('one whose number isn’t stated is as common as its typical sisters', () => {
    const all = priors({ models: [{ id: 'm', number: 100 }, { id: 'n', number: 10_000 }, { id: 'o' }] });
    expect(all.o! / all.m!).toBeCloseTo(10, 9);
  });
  it('types alike, with their stated share, where no numbers of them are stated', () => {
    const all = priors({ models: [{ id: 'm' }], types: [{ id: 't' }, { id: 'u' }] });
    expect(all.m).toBeCloseTo(SHARES.known, 9);
    expect(all.t).toBeCloseTo(SHARES.type / 2, 9);
    expect(all.none).toBeCloseTo(SHARES.none, 9);
  });
  it('types alone stand for all makers', () =>
    expect(priors({ types: [{ id: 't' }] }).t).toBeCloseTo(1 - SHARES.none, 9));
  it('without types, unknown makers are none of those known', () =>
    expect(priors({ models: [{ id: 'm' }] }).none).toBeCloseTo(SHARES.none + SHARES.type, 9));
  it('of a type’s number what known makers made of it is taken off, but never all', () => {
    const numbered = (number: number) =>
      priors({
        models: [{ id: 'm', number: 300, survival: 1, type: 't' }],
        types: [{ id: 't', number, survival: 1 }],
      });
    expect(numbered(1000).t! / numbered(1000).m!).toBeCloseTo(700 / 300, 9);
    expect(numbered(200).t! / numbered(200).m!).toBeCloseTo((200 * UNSTATED.otherMakers) / 300, 9);
  });
  it('nothing known at all: none', () => expect(priors({})).toEqual({ none: 1 }));
  it('survival 0 is rare, not impossible', () =>
    expect(priors({ models: [{ id: 'm', number: 5, survival: 0 }] }).m).toBeGreaterThan(0));
});
