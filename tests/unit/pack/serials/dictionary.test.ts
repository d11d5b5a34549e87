import { expect, it } from 'vitest';
import { Dictionary } from '../../../../src/pack/serials/dictionary';

it('keeps each value once, in the order in which they came', () => {
  const names = new Dictionary<string | null>((name) => name ?? '');
  expect(['b', null, 'a', 'b', null].map((name) => names.place(name))).toEqual([0, 1, 2, 0, 1]);
  expect(names.values).toEqual(['b', null, 'a']);
});
