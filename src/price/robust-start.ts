import type { Prior } from './conjugate';
import { median } from './quantile';

/** The median absolute deviation of a normal distribution, in standard deviations. */
const NORMAL_MAD = 0.6744897501960817;
/** The quartiles of the prior stand among the observations, as if a few of them had been seen. */
const PRIOR_POINTS = [-0.6744897501960817, 0, 0.6744897501960817];

/**
 * Where most of the prices lie and how far they spread, by medians, so that even a third of wild ones moves it little
 * (Hampel 1974): from here the weights are refined. Counted from all observations at once, a few wild prices together
 * would widen the spread until none of them stands out.
 * @param even the prices on the even scale, the offset of their kind taken off
 */
export function robustStart(prior: Prior, even: readonly number[]): { at: number; scale: number } {
  const spread = Math.sqrt(prior.variance);
  const points = [...even, ...PRIOR_POINTS.map((point) => prior.means[0]! + point * spread)];
  const at = median(points);
  return { at, scale: Math.max(median(points.map((point) => Math.abs(point - at))) / NORMAL_MAD, spread / 4) };
}
