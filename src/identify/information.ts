/** Entropy and information in bits (Shannon 1948). Distributions are shares of one whole; a share of 0 counts nothing. */

export function entropy(shares: ArrayLike<number>): number {
  let bits = 0;
  for (let i = 0; i < shares.length; i++) {
    const share = shares[i]!;
    if (share > 0) bits -= share * Math.log2(share);
  }
  return bits;
}

/**
 * How much an answer is expected to tell of which one it is: the mutual information of the two, H(answer) - H(answer |
 * which). Called information gain where a table decides (Mitchell, Machine Learning, 1997, section 3.4.1).
 * @param shares of each candidate
 * @param answers for candidate c the chance of answer v at c * count + v; each candidate's chances make one whole
 * @param count how many answers there are
 * @returns bits, never below 0
 */
export function expectedInformation(shares: ArrayLike<number>, answers: ArrayLike<number>, count: number): number {
  const overall = new Float64Array(count);
  let within = 0;
  for (let c = 0; c < shares.length; c++) {
    const share = shares[c]!;
    if (share === 0) continue;
    for (let v = 0; v < count; v++) {
      const chance = answers[c * count + v]!;
      overall[v]! += share * chance;
      if (chance > 0) within -= share * chance * Math.log2(chance);
    }
  }
  return Math.max(0, entropy(overall) - within);
}
