import { describe, expect, it } from 'vitest';
import { firstNotBefore } from '../../../src/text/in-order';

describe('the first of a list in order that no longer lies before', () => {
  const list = [2, 4, 4, 7];
  it.each([
    [1, 0],
    [2, 0],
    [3, 1],
    [4, 1],
    [5, 3],
    [7, 3],
    [8, 4],
  ])('%i: at %i', (sought, at) => expect(firstNotBefore(list, (one) => one < sought)).toBe(at));

  it('of an empty list: its end', () => expect(firstNotBefore([], () => true)).toBe(0));

  it('looks at as many more of a list twice as long as it takes to halve it once more', () => {
    const looks = (length: number): number => {
      let count = 0;
      firstNotBefore(
        Array.from({ length }, (_, i) => i),
        (one) => {
          count++;
          return one < length - 1;
        },
      );
      return count;
    };
    expect(looks(2048)).toBeLessThanOrEqual(looks(1024) + 1);
  });
});
