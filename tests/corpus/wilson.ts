/** Wilson's 95 % score interval for a proportion (Wilson 1927), as shares. */
export function wilson(hits: number, of: number): { share: number; low: number; high: number } {
  if (of === 0) return { share: Number.NaN, low: 0, high: 1 };
  const z = 1.959963984540054;
  const share = hits / of;
  const centre = (share + (z * z) / (2 * of)) / (1 + (z * z) / of);
  const half = (z / (1 + (z * z) / of)) * Math.sqrt((share * (1 - share)) / of + (z * z) / (4 * of * of));
  return { share, low: Math.max(0, centre - half), high: Math.min(1, centre + half) };
}
