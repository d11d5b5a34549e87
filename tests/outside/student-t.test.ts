import studentQuantileOfStdlib from '@stdlib/stats-base-dists-t-quantile';
import { describe, expect, it } from 'vitest';
import { studentCdf, studentQuantile } from '../../src/price/student-t';

// Percentage points of Student's distribution as every handbook prints them (e.g. Abramowitz and Stegun 1964, table
// 26.10; from memory), and the reference library @stdlib/stats-base-dists-t-quantile.

const TABLE: [freedom: number, p: number, t: number][] = [
  [1, 0.9, 3.078],
  [1, 0.975, 12.706],
  [2, 0.9, 1.886],
  [2, 0.975, 4.303],
  [3, 0.95, 2.353],
  [4, 0.975, 2.776],
  [5, 0.9, 1.476],
  [5, 0.995, 4.032],
  [10, 0.9, 1.372],
  [10, 0.975, 2.228],
  [20, 0.95, 1.725],
  [30, 0.975, 2.042],
  [60, 0.975, 2.0],
  [120, 0.95, 1.658],
];

describe('Student’s distribution', () => {
  it.each(TABLE)('%d degrees of freedom, %d: %d in the tables', (freedom, p, t) => {
    expect(studentQuantile(p, freedom)).toBeCloseTo(t, 3);
    expect(studentCdf(t, freedom)).toBeCloseTo(p, 3);
  });

  const levels = [0.001, 0.025, 0.1, 0.25, 0.5, 0.6, 0.9, 0.975, 0.999];
  it.each([0.7, 1, 1.5, 2, 3, 4.4, 7, 13, 30.5, 100, 1000])(
    'the library agrees at %d degrees of freedom',
    (freedom) => {
      for (const p of levels) {
        const reference = studentQuantileOfStdlib(p, freedom);
        expect(Math.abs(studentQuantile(p, freedom) - reference)).toBeLessThan(1e-9 * Math.max(1, Math.abs(reference)));
      }
    },
  );
});
