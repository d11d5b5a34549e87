import { describe, expect, test } from 'vitest';
import type { ChoiceAttribute } from '../../../../src/pack/schema/attributes';
import { accepted, issuesOf, smallPack } from '../support/packs';

type Value = Partial<ChoiceAttribute['values'][number]>;

function withValues(...values: Value[]) {
  const filled = values.map((value, i) => ({ id: 'abcdef'[i]!, label: 'x', ...value }));
  return smallPack({ attributes: [{ id: 'frame', kind: 'choice', label: 'Frame', values: filled }] });
}

describe('values of a choice', () => {
  test('may lie within each other, several deep, and exclude each other', () => {
    const pack = withValues({}, { within: 'a' }, { within: 'b', excludes: ['d'] }, { excludes: ['a', 'c'] });
    expect(accepted(pack)).toEqual(pack);
  });

  test.each<[string, Value[], string, string]>([
    ['within nothing', [{ within: 'z' }], 'within', 'nothing is called "z"'],
    ['within an inherited word', [{ within: 'constructor' }], 'within', 'nothing is called "constructor"'],
    ['within itself', [{ within: 'a' }], 'within', '"a" names itself'],
    ['excluding nothing', [{ excludes: ['z'] }], 'excludes[0]', 'nothing is called "z"'],
    ['excluding itself', [{ excludes: ['a'] }], 'excludes[0]', '"a" names itself'],
  ])('not %s', (_, values, field, what) => {
    expect(issuesOf(withValues(...values))).toMatchObject([{ path: `attributes[0].values[0].${field}`, what }]);
  });

  test('not in a circle: whoever walks up would never end', () => {
    const issues = issuesOf(withValues({ within: 'b' }, { within: 'c' }, { within: 'b' }));
    expect(issues.map(({ path, what }) => ({ path, what }))).toEqual([
      { path: 'attributes[0].values[1].within', what: '"b" lies within itself by way of others' },
      { path: 'attributes[0].values[2].within', what: '"c" lies within itself by way of others' },
    ]);
  });

  test('a long chain is walked without trouble', () => {
    const values = Array.from({ length: 50_000 }, (_, i) => ({
      id: `v${i}`,
      label: 'x',
      ...(i > 0 ? { within: `v${i - 1}` } : {}),
    }));
    accepted(smallPack({ attributes: [{ id: 'frame', kind: 'choice', label: 'Frame', values }] }));
  });
});
