/**
 * The natural logarithm of the gamma function for x > 0: Lanczos' series (SIAM J. Numer. Anal. 1964, g = 7, nine
 * terms, coefficients as widely reprinted), relative error below 1e-14.
 */
export function lnGamma(x: number): number {
  if (x < 0.5) return Math.log(Math.PI / Math.abs(Math.sin(Math.PI * x))) - lnGamma(1 - x);
  const z = x - 1;
  let sum = LANCZOS[0]!;
  for (let i = 1; i < LANCZOS.length; i++) sum += LANCZOS[i]! / (z + i);
  const t = z + 7.5;
  return 0.5 * Math.log(2 * Math.PI) + (z + 0.5) * Math.log(t) - t + Math.log(sum);
}

const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
];

const TINY = 1e-300;
const CLOSE = 1e-15;
const MOST_STEPS = 500;

/**
 * The regularised incomplete beta function I_x(a, b), by the continued fraction 26.5.8 of Abramowitz and Stegun (1964),
 * summed after Lentz's method; a, b > 0, x from 0 to 1.
 */
export function incompleteBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  // The fraction converges fast below the mean; above it the mirrored one does.
  if (x > (a + 1) / (a + b + 2)) return 1 - incompleteBeta(1 - x, b, a);
  const front = Math.exp(lnGamma(a + b) - lnGamma(a) - lnGamma(b) + a * Math.log(x) + b * Math.log1p(-x)) / a;
  let c = 1;
  let d = 1 / held(1 - ((a + b) * x) / (a + 1));
  let sum = d;
  for (let m = 1; m <= MOST_STEPS; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / held(1 + even * d);
    c = held(1 + even / c);
    sum *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / held(1 + odd * d);
    c = held(1 + odd / c);
    const factor = d * c;
    sum *= factor;
    if (Math.abs(factor - 1) < CLOSE) break;
  }
  return front * sum;
}

function held(value: number): number {
  return Math.abs(value) < TINY ? TINY : value;
}
