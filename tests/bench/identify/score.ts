/** What was said of one thing, and what it was. */
export interface Told {
  shares: Float64Array;
  truth: number;
}

export interface Score {
  top1: number;
  top3: number;
  /** Mean surprise at the truth, in bits. */
  logLoss: number;
  /** Mean squared distance over all hypotheses (Brier 1950): 0 to 2. */
  brier: number;
  /** Mean distance of what was said and what came true of the likeliest, weighed by how often. */
  calibration: number;
  bins: Bin[];
}

/** Things of which the likeliest was said to be about so likely. */
export interface Bin {
  count: number;
  said: number;
  right: number;
}

const BINS = 10;

export function scoreOf(all: readonly Told[]): Score {
  const bins: Bin[] = Array.from({ length: BINS }, () => ({ count: 0, said: 0, right: 0 }));
  let top1 = 0;
  let top3 = 0;
  let logLoss = 0;
  let brier = 0;
  for (const { shares, truth } of all) {
    const own = shares[truth]!;
    let above = 0;
    let best = 0;
    let squares = 0;
    shares.forEach((share, h) => {
      if (share > own) above++;
      if (share > shares[best]!) best = h;
      squares += (share - (h === truth ? 1 : 0)) ** 2;
    });
    if (above < 1) top1++;
    if (above < 3) top3++;
    logLoss -= Math.log2(Math.max(own, 1e-12));
    brier += squares;
    const bin = bins[Math.min(BINS - 1, Math.floor(shares[best]! * BINS))]!;
    bin.count++;
    bin.said += shares[best]!;
    if (best === truth) bin.right++;
  }
  const n = all.length;
  const calibration = bins.reduce((sum, bin) => sum + Math.abs(bin.said - bin.right), 0) / n;
  return { top1: top1 / n, top3: top3 / n, logLoss: logLoss / n, brier: brier / n, calibration, bins };
}
