import { incompleteBeta, lnGamma } from './gamma';

/**
 * Student's t distribution function. With many degrees of freedom it is the normal distribution's.
 * @param freedom degrees of freedom, above 0
 * @returns a probability
 */
export function studentCdf(t: number, freedom: number): number {
  const square = t * t;
  // Near the middle the first form loses digits, in the tails the second.
  const within =
    square < freedom
      ? incompleteBeta(square / (freedom + square), 0.5, freedom / 2)
      : 1 - incompleteBeta(freedom / (freedom + square), freedom / 2, 0.5);
  if (t >= 0) return 0.5 + within / 2;
  return square < freedom ? 0.5 - within / 2 : incompleteBeta(freedom / (freedom + square), freedom / 2, 0.5) / 2;
}

/** Its density. */
function studentDensity(t: number, freedom: number): number {
  const front = lnGamma((freedom + 1) / 2) - lnGamma(freedom / 2) - 0.5 * Math.log(freedom * Math.PI);
  return Math.exp(front - ((freedom + 1) / 2) * Math.log1p((t * t) / freedom));
}

/**
 * Its quantile: Newton's steps inside a bracket that always holds the root, so that it converges in the far tails of
 * one degree of freedom too.
 * @param p above 0 and below 1
 */
export function studentQuantile(p: number, freedom: number): number {
  if (p === 0.5) return 0;
  if (p < 0.5) return -studentQuantile(1 - p, freedom);
  let low = 0;
  let high = 1;
  while (studentCdf(high, freedom) < p) {
    low = high;
    high *= 2;
    if (!Number.isFinite(high)) return Number.POSITIVE_INFINITY;
  }
  let at = (low + high) / 2;
  for (let step = 0; step < 200; step++) {
    const over = studentCdf(at, freedom) - p;
    if (over > 0) high = at;
    else low = at;
    const newton = at - over / studentDensity(at, freedom);
    const next = newton > low && newton < high ? newton : (low + high) / 2;
    if (Math.abs(next - at) <= 1e-15 * Math.max(1, Math.abs(next))) return next;
    at = next;
  }
  return at;
}
