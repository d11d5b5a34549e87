import { describe, expect, it } from 'vitest';
import { editDistance } from '../../../src/claims/edit-distance';

describe('edit distance', () => {
  it.each([
    ['wendelow', 'wendelow', 0],
    ['wendelow', 'wendlow', 1],
    ['wendelow', 'wednelow', 1],
    ['wendelow', 'wandelaw', 2],
    ['wendelow', 'cressiter', 3],
  ])('%s to %s is %d (3 stands for more)', (a, b, distance) => {
    expect(editDistance(a, b, 2)).toBe(distance);
    expect(editDistance(b, a, 2)).toBe(distance);
  });
});
