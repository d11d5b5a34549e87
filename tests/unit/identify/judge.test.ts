import { describe, expect, it } from 'vitest';
import { judge } from '../../../src/identify/judge';
import type { Allowed, AttributeKnown, FactKnown } from '../../../src/pack/knowledge';
import type { Attribute } from '../../../src/pack/schema/attributes';

const attribute = (def: Attribute): AttributeKnown => ({ ref: `p/${def.id}`, pack: 'p', id: def.id, def });

/** Round bobbins are of one class or another; a long one is none of them. */
const bobbin = attribute({
  id: 'bobbin',
  kind: 'choice',
  label: 'bobbin',
  values: [
    { id: 'long', label: 'long', excludes: ['round'] },
    { id: 'round', label: 'round', excludes: ['long'] },
    { id: 'class-15', label: 'class 15', within: 'round', excludes: ['long', 'class-66'] },
    { id: 'class-66', label: 'class 66', within: 'round', excludes: ['long', 'class-15'] },
  ],
});
const frame = attribute({
  id: 'frame',
  kind: 'choice',
  label: 'frame',
  values: [
    { id: 'iron', label: 'iron' },
    { id: 'alloy', label: 'alloy' },
  ],
});
/** A converted machine may have both. */
const drive = attribute({
  id: 'drive',
  kind: 'choice',
  label: 'drive',
  values: [
    { id: 'crank', label: 'crank', excludes: [] },
    { id: 'motor', label: 'motor' },
  ],
});
const feed = attribute({ id: 'feed', kind: 'yes-no', label: 'drop feed' });
const weight = attribute({ id: 'weight', kind: 'measure', label: 'weight', unit: 'kg' });

const values = (text: string): Allowed => ({ kind: 'values', values: new Set(text.split('|')) });
const yes = (value: boolean): Allowed => ({ kind: 'yes-no', value });
const range = (from: number, to: number): Allowed => ({ kind: 'range', from, to });

function judged(of: AttributeKnown, claimed: Allowed, facts: readonly Allowed[], denied = false): string {
  const known = facts.map((allowed) => ({ attribute: of, allowed }) as FactKnown);
  return judge({ allowed: claimed, denied }, of, known);
}

describe('values', () => {
  it.each([
    ['iron', 'iron', 'agrees'],
    ['alloy', 'iron', 'refutes'],
    ['iron', 'iron|alloy', 'open'],
    ['iron|alloy', 'iron', 'agrees'],
  ])('%s against %s: %s', (claimed, fact, expected) =>
    expect(judged(frame, values(claimed), [values(fact)])).toBe(expected),
  );

  it.each([
    ['round', 'class-15', 'agrees'],
    ['class-15', 'round', 'open'],
    ['class-66', 'class-15', 'refutes'],
    ['class-15', 'long', 'refutes'],
    ['long', 'class-15', 'refutes'],
    ['long', 'round', 'refutes'],
    ['class-15', 'class-15|class-66', 'open'],
    ['class-66', 'long|class-15', 'refutes'],
  ])('kinds of kinds: %s against %s: %s', (claimed, fact, expected) =>
    expect(judged(bobbin, values(claimed), [values(fact)])).toBe(expected),
  );

  it('what lets others stand beside it refutes nothing, from either side', () => {
    expect(judged(drive, values('crank'), [values('motor')])).toBe('open');
    expect(judged(drive, values('motor'), [values('crank')])).toBe('open');
  });
});

describe('yes or no, and ranges', () => {
  it('yes and no', () => {
    expect(judged(feed, yes(true), [yes(true)])).toBe('agrees');
    expect(judged(feed, yes(true), [yes(false)])).toBe('refutes');
  });
  it.each([
    [9, 10, 12, 13, 'refutes'],
    [14, 15, 12, 13, 'refutes'],
    [12, 13, 12.2, 12.8, 'agrees'],
    [12.4, 12.6, 12, 13, 'open'],
    [13, 15, 12, 13, 'open'],
    [Number.NEGATIVE_INFINITY, 8, 12, 13, 'refutes'],
    [Number.NEGATIVE_INFINITY, 14, 12, 13, 'agrees'],
  ])('%d to %d against %d to %d: %s', (from, to, low, high, expected) =>
    expect(judged(weight, range(from, to), [range(low, high)])).toBe(expected),
  );
});

describe('several facts in force', () => {
  it('all must say so', () => {
    expect(judged(feed, yes(true), [yes(false), yes(false)])).toBe('refutes');
    expect(judged(feed, yes(true), [yes(false), yes(true)])).toBe('open');
  });
  it('none leaves it open', () => expect(judged(feed, yes(true), [])).toBe('open'));
});

describe('a denial', () => {
  it('turns the answer round', () => {
    expect(judged(frame, values('alloy'), [values('iron')], true)).toBe('agrees');
    expect(judged(frame, values('iron'), [values('iron')], true)).toBe('refutes');
  });
  it('leaves open what is open', () =>
    expect(judged(frame, values('iron'), [values('iron|alloy')], true)).toBe('open'));
});

it('things of different kinds can’t be compared', () => expect(judged(weight, yes(true), [range(1, 2)])).toBe('open'));
