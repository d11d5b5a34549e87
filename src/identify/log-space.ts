/**
 * Probabilities as logarithms (natural), so that a product of many small ones doesn't become 0. Minus infinity is
 * "impossible".
 */

/** log(sum of exp(x)), without overflow or underflow at any size of x: the largest is taken out first. */
export function logSumExp(logs: ArrayLike<number>): number {
  let most = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < logs.length; i++) if (logs[i]! > most) most = logs[i]!;
  if (most === Number.NEGATIVE_INFINITY || most === Number.POSITIVE_INFINITY) return most;
  let sum = 0;
  for (let i = 0; i < logs.length; i++) sum += Math.exp(logs[i]! - most);
  return most + Math.log(sum);
}

/** Shares of one whole from unnormalised logs; where every one is impossible, all are alike. */
export function normalised(logs: ArrayLike<number>): Float64Array {
  const shares = new Float64Array(logs.length);
  const whole = logSumExp(logs);
  if (whole === Number.NEGATIVE_INFINITY) return shares.fill(1 / Math.max(1, logs.length));
  for (let i = 0; i < logs.length; i++) shares[i] = Math.exp(logs[i]! - whole);
  return shares;
}
