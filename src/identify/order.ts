/** More than this, and a position doesn't fit beside a share in one number. */
const MOST_PACKED = 2 ** 16;
const STEPS = 2 ** 36;

/**
 * Positions by their shares, the largest first; of equals the first. Thousands are ordered anew with every answer, and
 * sorting plain numbers is several times as fast as sorting with a comparison: share and position go into one number of
 * 52 bits. Shares closer than 2^-36 count as equal.
 */
export function orderOf(shares: Float64Array): number[] {
  if (shares.length > MOST_PACKED)
    return Array.from(shares, (_, i) => i).sort((a, b) => shares[b]! - shares[a]! || a - b);
  const packed = new Float64Array(shares.length);
  for (let i = 0; i < shares.length; i++) packed[i] = (STEPS - Math.round(shares[i]! * STEPS)) * MOST_PACKED + i;
  packed.sort();
  const order: number[] = new Array(shares.length);
  for (let i = 0; i < shares.length; i++) order[i] = packed[i]! % MOST_PACKED;
  return order;
}
