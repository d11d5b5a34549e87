import { describe, expect, it } from 'vitest';
import { posterior, predictive } from '../../src/price/conjugate';

/**
 * The midge wing lengths worked through in P. D. Hoff, A First Course in Bayesian Statistical Methods (2009), section
 * 5.3 (data, prior and printed results from memory): prior mean 1.9 worth one observation, variance guess 0.01 worth
 * one; nine lengths of mean 1.804 and variance 0.0169. Printed: mean 1.814, variance 0.0153 on ten degrees of freedom.
 */
const WINGS = [1.64, 1.7, 1.72, 1.74, 1.82, 1.82, 1.82, 1.9, 2.08];
const PRIOR = { means: [1.9], worth: [1], freedom: 1, variance: 0.01 };

const after = posterior(
  PRIOR,
  WINGS.map(() => [1]),
  WINGS,
  WINGS.map(() => 1),
)!;

describe('the normal model with unknown mean and variance, as worked in Hoff 2009', () => {
  it('posterior mean', () => expect(after.coefficients[0]).toBeCloseTo(1.814, 3));
  it('posterior variance', () => expect(after.variance).toBeCloseTo(0.0153, 3));
  it('degrees of freedom', () => expect(after.freedom).toBe(10));

  it('the next one is expected with the variance times 1 + 1/10', () => {
    const next = predictive(after, [1]);
    expect(next.at).toBeCloseTo(1.814, 3);
    expect(next.scale ** 2).toBeCloseTo(after.variance * 1.1, 12);
  });

  it('one observation of weight two is as two of weight one', () => {
    const once = posterior(PRIOR, [[1]], [1.7], [2])!;
    const twice = posterior(PRIOR, [[1], [1]], [1.7, 1.7], [1, 1])!;
    expect(once.coefficients[0]).toBeCloseTo(twice.coefficients[0]!, 12);
    expect(once.variance).toBeCloseTo(twice.variance, 12);
    expect(once.freedom).toBe(twice.freedom);
  });
});
