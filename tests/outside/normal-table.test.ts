import { describe, expect, it } from 'vitest';
import { NORMAL_90, normalCdf } from '../../src/price/normal';

/**
 * Abramowitz and Stegun, Handbook of Mathematical Functions (1964), table 26.1: P(x) of the standard normal
 * distribution. From memory, to the places given here.
 */
const TABLE: [x: number, p: number][] = [
  [0, 0.5],
  [0.1, 0.539828],
  [0.25, 0.598706],
  [0.5, 0.691462],
  [0.75, 0.773373],
  [1, 0.841345],
  [1.25, 0.89435],
  [1.5, 0.933193],
  [1.75, 0.959941],
  [2, 0.97725],
  [2.5, 0.99379],
  [3, 0.99865],
  [3.5, 0.999767],
  [4, 0.999968],
];

/** Table 26.5 of the same, x for given Q(x); from memory. */
const POINTS: [q: number, x: number][] = [
  [0.1, 1.28155],
  [0.05, 1.64485],
  [0.025, 1.95996],
  [0.01, 2.32635],
  [0.005, 2.57583],
];

describe('the standard normal distribution, against the tables', () => {
  it.each(TABLE)('P(%d) = %d', (x, p) => {
    expect(normalCdf(x)).toBeCloseTo(p, 5);
    expect(normalCdf(-x)).toBeCloseTo(1 - p, 5);
  });
  it.each(POINTS)('Q = %d at %d', (q, x) => expect(1 - normalCdf(x)).toBeCloseTo(q, 5));
  it('has its 90 % point where the table has it', () => {
    expect(NORMAL_90).toBeCloseTo(POINTS[0]![1], 5);
    expect(normalCdf(NORMAL_90)).toBeCloseTo(0.9, 6);
  });
});
