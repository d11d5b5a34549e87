/**
 * The standard normal distribution function, by the rational approximation of erfc in Abramowitz and Stegun,
 * Handbook of Mathematical Functions (1964), formula 7.1.26: absolute error below 1.5e-7.
 */
export function normalCdf(z: number): number {
  const x = Math.abs(z) / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * x);
  const poly = t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
  const tail = poly * Math.exp(-x * x) * 0.5;
  return z >= 0 ? 1 - tail : tail;
}

/** The 90 % point of the standard normal distribution: a band's ends hold the central 80 %. */
export const NORMAL_90 = 1.2815515655446004;
