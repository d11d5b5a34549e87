import { expect, it } from 'vitest';
import { pageAddress } from '../../../src/session/address';
import { keyOf, whereOf } from '../../../src/session/where';

it('finds its way back from a key', () => {
  expect(whereOf(keyOf({ window: 12, tab: 345 }))).toEqual({ window: 12, tab: 345 });
});

it.each(['', 'reading/', 'reading/1', 'reading/1/2/3', 'reading/-1/2', 'reading/a/b', 'other/1/2', 'reading/1/2 '])(
  'knows that "%s" is no key of a reading',
  (key) => {
    expect(whereOf(key)).toBeNull();
  },
);

it('takes an address without its anchor, and no more of it than is of use', () => {
  expect(pageAddress('https://market.example/a?b=1#photo')).toBe('https://market.example/a?b=1');
  expect(pageAddress(`https://market.example/${'x'.repeat(9000)}`).length).toBe(4000);
});
