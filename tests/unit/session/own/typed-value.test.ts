import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Pack } from '../../../../src/pack/schema/index';
import { isTypable, typedForm, valueTyped } from '../../../../src/session/own/typed-value';
import type { Json } from '../../../../src/sharing/propose/json';

const demo = JSON.parse(readFileSync('fixtures/packs/grindlewade-circle.json', 'utf8')) as Pack;

describe('a value that is typed', () => {
  it.each([
    [true, 'no', false],
    [142_000, '141999', 141_999],
    ['cast', ' alloy ', 'alloy'],
    [{ from: 11, to: 12 }, '10.5 to 12', { from: 10.5, to: 12 }],
    [{ from: 11, to: 12 }, '11', { from: 11, to: 11 }],
    [{ from: 11 }, '9 or more', { from: 9 }],
    [['a', 'b'], 'a, c', ['a', 'c']],
    [{ is: 3, source: 's' }, '4', { is: 4, source: 's' }],
    [null, 'Harrowslade', 'Harrowslade'],
  ] as [Json, string, Json][])('in the place of %j: %s', (was, typed, expected) => {
    expect(valueTyped(typed, was)).toEqual(expected);
  });

  it.each([
    [true, 'perhaps'],
    [5, 'five'],
    [{ from: 1, to: 2 }, 'about 3'],
    ['x', ''],
  ] as [Json, string][])('in the place of %j is none: %s', (was, typed) => {
    expect(valueTyped(typed, was)).toBeUndefined();
  });

  it('comes back as it was from the form in which it is shown', () => {
    const facts = demo.models!.flatMap((each) => Object.values(each.facts ?? {})) as Json[];
    const typable = facts.filter(isTypable);
    expect(typable.length).toBeGreaterThan(20);
    for (const fact of typable) expect(valueTyped(typedForm(fact), fact)).toEqual(fact);
    expect(isTypable([{ is: 'a', when: { made: { to: 1933 } } }, { is: 'b' }])).toBe(false);
  });
});
