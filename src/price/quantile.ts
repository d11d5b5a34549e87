/**
 * The value below which a share p of the values lies: type 7 of Hyndman and Fan, Sample Quantiles in Statistical Packages,
 * 1996, which is what most programs mean by a quantile.
 * @param values at least one, in any order
 * @param p from 0 to 1
 */
export function quantile(values: readonly number[], p: number): number {
  const sorted = Float64Array.from(values).sort();
  const at = (sorted.length - 1) * p;
  const below = sorted[Math.floor(at)]!;
  const above = sorted[Math.ceil(at)]!;
  return below + (at - Math.floor(at)) * (above - below);
}

/** @param values at least one */
export function median(values: readonly number[]): number {
  return quantile(values, 0.5);
}
