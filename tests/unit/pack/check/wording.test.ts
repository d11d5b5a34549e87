import { describe, expect, test } from 'vitest';
import type { Means } from '../../../../src/pack/schema/wording';
import { accepted, issuesOf, smallPack } from '../support/packs';

function withMeaning(means: Means) {
  return smallPack({
    attributes: [
      { id: 'frame', kind: 'choice', label: 'Frame', values: [{ id: 'iron', label: 'iron' }] },
      { id: 'weight', kind: 'measure', label: 'Weight', unit: 'kg' },
    ],
    wording: [{ id: 'w', words: ['w'], means }],
  });
}

describe('what words mean', () => {
  test.each<Means>([
    { attribute: 'frame', is: 'iron' },
    { attribute: 'weight', is: { from: 1, to: 2 } },
    { attribute: 'weight', atMost: 8 },
    { attribute: 'weight', atLeast: 8, atMost: 8 },
    { made: { to: 1901 } },
    { made: {} },
    { ageAtLeast: 100 },
    { madeUnder: 5000 },
  ])('may be %j', (means) => {
    accepted(withMeaning(means));
  });

  test.each<[Means, string, string, string]>([
    [{ attribute: 'frame', is: 'wood' }, '.is', '"wood" is there', 'a value of the attribute "frame"'],
    [{ attribute: 'weight', is: 'iron' }, '.is', '"iron" is there', 'a number or a range, for "weight" is a measure'],
    [{ attribute: 'weight' }, '', 'an object is there', '"is", "atMost" or "atLeast"'],
    [{ attribute: 'weight', atLeast: 9, atMost: 8 }, '', '9 to 8', 'the first no later than the last'],
    [{ attribute: 'frame', atMost: 8 }, '.attribute', '"frame" is there', 'an attribute of the kind "measure"'],
    [{ made: { from: 1901, to: 1837 } }, '.made', '1901 to 1837', 'the first no later than the last'],
  ])('can not be %j', (means, path, what, expected) => {
    expect(issuesOf(withMeaning(means))).toEqual([{ path: `wording[0].means${path}`, what, expected }]);
  });

  test('a caution is tied to values that there are', () => {
    const pack = withMeaning({ ageAtLeast: 1 });
    pack.cautions = [{ id: 'c', text: 'c', facts: [{ attribute: 'frame', is: ['iron', 'wood'] }] }];
    expect(issuesOf(pack)).toEqual([
      { path: 'cautions[0].facts[0].is', what: '"wood" is there', expected: 'a value of the attribute "frame"' },
    ]);
  });
});
