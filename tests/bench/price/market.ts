import type { Chance } from '../identify/chance';

/** A stated band: 80 of 100 between low and high, as a pack would write it, worth so many prices. */
export const STATED = { low: 100 / 1.5, mid: 100, high: 150, worth: 6, kind: 'paid' as const };
/** The degrees of freedom with which such a band's width is believed; as in src/price/posterior-band.ts. */
const FREEDOM = 3;
/** The 90 % point of Student's distribution with as many (by @stdlib). */
const T90 = 1.6377443536962093;

/** How the truth stands to what is stated of it. */
export interface Truth {
  name: string;
  /** By how many standard deviations of the stated place the true one is off. */
  shift: number;
  /** How many times as wide as stated prices really spread, in the standard deviation. */
  wider: number;
}

export const TRUTHS: readonly Truth[] = [
  { name: 'as stated', shift: 0, wider: 1 },
  { name: 'shifted by one sd of the stated place', shift: 1, wider: 1 },
  { name: 'overconfident by two', shift: 0, wider: 2 },
];

export interface Market {
  /** Prices that were seen, and one that has not been seen yet. */
  seen: number[];
  next: number;
}

/** One market: a place and a spread drawn from what is stated, bent as the truth says, and prices from it. */
export function market(truth: Truth, n: number, chance: Chance): Market {
  const side = Math.log(STATED.high / STATED.mid);
  const guess = side / T90 / Math.sqrt(1 + 1 / STATED.worth);
  const spread = guess * Math.sqrt(FREEDOM / chiSquare(FREEDOM, chance)) * truth.wider;
  const drawn = truth.shift === 0 ? normal(chance) : truth.shift * (chance.happens(0.5) ? 1 : -1);
  const place = Math.log(STATED.mid) + (spread * drawn) / Math.sqrt(STATED.worth);
  const price = () => Math.exp(place + spread * normal(chance));
  return { seen: Array.from({ length: n }, price), next: price() };
}

/** One in ten of them ten to a hundred times too high or too low, as slips and wishes are. */
export function withOutliers({ seen, next }: Market, chance: Chance): Market {
  const wild = (price: number) => price * 10 ** ((1 + chance.next()) * (chance.happens(0.5) ? 1 : -1));
  return { seen: seen.map((price) => (chance.happens(0.1) ? wild(price) : price)), next };
}

/** Box and Muller 1958. */
function normal(chance: Chance): number {
  return Math.sqrt(-2 * Math.log(1 - chance.next())) * Math.cos(2 * Math.PI * chance.next());
}

function chiSquare(freedom: number, chance: Chance): number {
  let sum = 0;
  for (let i = 0; i < freedom; i++) sum += normal(chance) ** 2;
  return sum;
}
