/**
 * Probabilities as logarithms (natural), so that a product of many small ones doesn't become 0. Minus infinity is
 * "impossible".
 */

/** log(sum of exp(x)), without overflow or underflow at any size of x: the largest is taken out first. */
export function logSumExp(logs: ArrayLike<number>): number {
  const most = largest(logs);
  return Number.isFinite(most) ? most + Math.log(sumBelow(logs, most)) : most;
}

/**
 * Shares of one whole from unnormalised logs; where every one is impossible, all are alike. The sum is divided by, not
 * its logarithm taken off: beside a very large one that logarithm would be lost.
 */
export function normalised(logs: ArrayLike<number>): Float64Array {
  const shares = new Float64Array(logs.length);
  const most = largest(logs);
  if (most === Number.NEGATIVE_INFINITY) return shares.fill(1 / Math.max(1, logs.length));
  const sum = sumBelow(logs, most);
  for (let i = 0; i < logs.length; i++) shares[i] = Math.exp(logs[i]! - most) / sum;
  return shares;
}

function largest(logs: ArrayLike<number>): number {
  let most = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < logs.length; i++) if (logs[i]! > most) most = logs[i]!;
  return most;
}

function sumBelow(logs: ArrayLike<number>, most: number): number {
  let sum = 0;
  for (let i = 0; i < logs.length; i++) sum += Math.exp(logs[i]! - most);
  return sum;
}
