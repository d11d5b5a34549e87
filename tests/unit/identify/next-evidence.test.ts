import { describe, expect, it } from 'vitest';
import { identify } from '../../../src/identify/identify';
import { nextEvidence } from '../../../src/identify/next-evidence';
import { knowledgeOf, readingWith, type Small } from './support/small';

const asked = (
  small: Small,
  { answers = {}, claims = [] as [string, string][], called = null as string | null, atHand = false } = {},
) => {
  const knowledge = knowledgeOf(small);
  const reading = readingWith(knowledge, claims, called);
  return nextEvidence(identify({ reading, serial: null, answers }, knowledge), answers, 5, { atHand });
};
const ids = (list: ReturnType<typeof asked>) => list.map(({ leaves }) => leaves.attribute.id);
const twins = (number: number): Small => ({
  attributes: { same: ['x', 'y'], differs: ['x', 'y'], unknown: ['x', 'y'] },
  types: [
    { id: 'm', number, facts: { same: 'x', differs: 'x' } },
    { id: 'n', number: 100, facts: { same: 'x', differs: 'y' } },
  ],
});

describe('what to find out next', () => {
  it('two look-alikes are told apart by what tells them apart', () =>
    expect(ids(asked(twins(100)))[0]).toBe('differs'));
  it('what is answered, and what can’t be told, isn’t asked again', () => {
    expect(ids(asked(twins(100), { answers: { 'small/differs': 'x' } }))).not.toContain('differs');
    expect(ids(asked(twins(100), { answers: { 'small/differs': null } }))).not.toContain('differs');
  });
  it('what the seller has said already is expected to tell less', () => {
    const bits = (claims: [string, string][]) =>
      asked(twins(100), { claims }).find(({ leaves }) => leaves.attribute.id === 'differs')!.bits;
    expect(bits([['differs', 'x']])).toBeLessThan(bits([]));
  });
  it('settled, it asks only what could change the mind', () => {
    const same = { a: 'x', b: 'x', c: 'x', alike: 'x' };
    const small = (number: number): Small => ({
      attributes: Object.fromEntries([...Object.keys(same), 'differs'].map((id) => [id, ['x', 'y']])),
      trust: { seller: 0.8, eye: 0.995 },
      types: [
        { id: 'm', number, facts: { ...same, differs: 'x' } },
        { id: 'n', number: 100, facts: { ...same, differs: 'y' } },
      ],
    });
    const answers = { 'small/a': 'x', 'small/b': 'x', 'small/c': 'x' };
    const few = asked(small(5000), { answers });
    expect(ids(few)).toEqual(['differs']);
    expect(few[0]!.changes).toBeGreaterThan(0);
    expect(ids(asked(small(1e9), { answers }))).toEqual([]);
  });
  it('effort counts, but not for who has the thing before them', () => {
    const small: Small = {
      attributes: { visit: ['x', 'y'], read: ['x', 'y'] },
      types: [
        { id: 'm', facts: { visit: 'x', read: { is: 'x', holds: 'usually' } } },
        { id: 'n', facts: { visit: 'y', read: { is: 'y', holds: 'usually' } } },
      ],
    };
    const effort = { visit: 'visit', read: 'read' } as const;
    const knowledge = knowledgeOf(small);
    for (const attribute of knowledge.attributes.values())
      attribute.def = { ...attribute.def, effort: effort[attribute.id as keyof typeof effort] };
    const identified = identify({ reading: readingWith(knowledge, []), serial: null, answers: {} }, knowledge);
    expect(ids(nextEvidence(identified, {}, 5))).toEqual(['read', 'visit']);
    expect(ids(nextEvidence(identified, {}, 5, { atHand: true }))).toEqual(['visit', 'read']);
  });
  it('at most so many', () => {
    const names = Array.from({ length: 9 }, (_, i) => `f-${i}`);
    const small: Small = {
      attributes: Object.fromEntries(names.map((id) => [id, ['x', 'y']])),
      types: ['x', 'y'].map((value) => ({ id: value, facts: Object.fromEntries(names.map((id) => [id, value])) })),
    };
    expect(asked(small)).toHaveLength(5);
  });
});
