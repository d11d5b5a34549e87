import { leastSquares, leverage, type Solved } from './least-squares';
import { studentCdf, studentQuantile } from './student-t';

/**
 * What is believed before any observation, of a linear model y = x·b + e, e normal with variance s²/weight: the
 * normal-inverse-gamma prior, conjugate to it (Gelman et al., Bayesian Data Analysis, ch. 14).
 */
export interface Prior {
  /** Prior means of the coefficients. */
  means: readonly number[];
  /** How many observations each is worth; 0: nothing is known of it. */
  worth: readonly number[];
  /** Degrees of freedom behind the variance, and its prior guess. */
  freedom: number;
  variance: number;
}

export interface Posterior {
  coefficients: readonly number[];
  solved: Solved;
  freedom: number;
  variance: number;
}

/**
 * The conjugate update, given the weights: the prior stands as further rows of one least-squares problem.
 * @param rows one design row for each observation
 * @param weights above 0; a weight of 2 counts as two observations in the same place
 * @param left a sum of squares that no coefficient can take up: of observations around the means that stand for them
 * @returns null where prior and observations leave a coefficient undetermined
 */
export function posterior(
  prior: Prior,
  rows: readonly (readonly number[])[],
  y: readonly number[],
  weights: readonly number[],
  left = 0,
): Posterior | null {
  const known = prior.means.flatMap((mean, at) => (prior.worth[at]! > 0 ? [{ mean, at }] : []));
  const design = [
    ...rows.map((row, i) => row.map((value) => value * Math.sqrt(weights[i]!))),
    ...known.map(({ at }) => prior.means.map((_, j) => (j === at ? Math.sqrt(prior.worth[at]!) : 0))),
  ];
  const target = [
    ...y.map((value, i) => value * Math.sqrt(weights[i]!)),
    ...known.map(({ mean, at }) => mean * Math.sqrt(prior.worth[at]!)),
  ];
  const solved = design.length >= prior.means.length ? leastSquares(design, target) : null;
  if (!solved) return null;
  const counted = weights.reduce((sum, weight) => sum + weight, 0);
  // A coefficient of which nothing was known costs the observations one degree of freedom.
  const freedom = prior.freedom + counted - (prior.means.length - known.length);
  if (!(freedom > 0)) return null;
  const variance = (prior.freedom * prior.variance + solved.residual + left) / freedom;
  return { coefficients: solved.coefficients, solved, freedom, variance };
}

/** Where the next observation with design row x is expected: a Student distribution. */
export interface Predictive {
  at: number;
  scale: number;
  freedom: number;
}

export function predictive({ coefficients, solved, freedom, variance }: Posterior, x: readonly number[]): Predictive {
  const at = x.reduce((sum, value, j) => sum + value * coefficients[j]!, 0);
  return { at, scale: Math.sqrt(variance * (1 + leverage(solved.r, x))), freedom };
}

export function quantileOf({ at, scale, freedom }: Predictive, p: number): number {
  return at + scale * studentQuantile(p, freedom);
}

export function shareBelowOf({ at, scale, freedom }: Predictive, y: number): number {
  return studentCdf((y - at) / scale, freedom);
}
