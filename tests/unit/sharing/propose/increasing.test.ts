import { describe, expect, it } from 'vitest';
import { increasing } from '../../../../src/sharing/propose/increasing';

describe('a longest increasing subsequence', () => {
  it.each([
    [[], []],
    [[5], [0]],
    [
      [2, 0, 1, 3],
      [1, 2, 3],
    ],
    [[3, 2, 1], [2]],
    [
      [0, 8, 4, 12, 2, 10, 6, 14, 1, 9],
      [0, 4, 6, 9],
    ],
  ])('of %j stands at %j', (numbers, positions) => {
    expect(increasing(numbers)).toEqual(positions);
  });
});
