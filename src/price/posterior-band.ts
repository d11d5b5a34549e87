import { type Posterior, type Prior, posterior, predictive, quantileOf, shareBelowOf } from './conjugate';
import { median } from './quantile';
import { robustStart } from './robust-start';
import { keptAt, outlierWeights } from './robust-weights';
import { studentQuantile } from './student-t';
import { fromEven, type TwoSided, toEven, twoSided } from './two-sided';

/** A price made comparable: of today's money, in the band's currency. */
export interface Comparable {
  price: number;
  kind: 'asked' | 'paid';
  /** Between 0 and 1: how much it tells of the thing in question, by age and likeness. */
  weight: number;
}

/** What is known before any observation: the stated band, its ends holding the central 80 %, or a guess. */
export interface Before {
  low: number;
  mid: number;
  high: number;
  /** How many observations the band's place is worth, above 0. */
  worth: number;
  /** Whether its prices are asked or paid ones. */
  kind: 'asked' | 'paid';
}

export interface PosteriorBand {
  scale: TwoSided;
  posterior: Posterior;
  kind: 'asked' | 'paid';
  /** What each observation counted for in the end, weight by likeness times robust weight; in their order. */
  counted: number[];
}

/**
 * Degrees of freedom behind a stated band's width: a third of what its place is worth, as keepers know where prices lie
 * better than how far they spread, and three at least.
 */
function freedomOf(worth: number): number {
  return Math.max(3, worth / 3);
}
/** Asked is not paid: in thin markets what is paid stands some 10 % below. Common practice, no source. */
const PAID_BELOW_ASKED = Math.log(0.9);
/** How many observations that is worth. */
const OFFSET_WORTH = 4;
/**
 * Where nothing is known but what was seen: how far prices of one kind of thing spread, as a standard deviation of their
 * logarithm (80 of 100 within a factor of 1.8 either way; common practice, no source), and how sure that is.
 */
const UNKNOWN = { spread: 0.46, freedom: 2 };
const ROUNDS = 12;
const SETTLED = 1e-4;

/** The belief before, on the even scale on which the stated band's ends are -1 and 1. */
export function priorOf({ worth, kind }: Before, scale: TwoSided): Prior {
  const freedom = freedomOf(worth);
  const t = studentQuantile(0.9, freedom);
  const offset = kind === 'asked' ? PAID_BELOW_ASKED / scale.below : -PAID_BELOW_ASKED / scale.above;
  return {
    means: [0, offset],
    worth: [worth, OFFSET_WORTH],
    freedom,
    // So that the predictive's central 80 % is the stated band exactly.
    variance: 1 / ((1 + 1 / worth) * t * t),
  };
}

/**
 * The band after the observations: conjugate given the weights, and weights that hold wild prices down.
 * @param options.robust false leaves the weights as they are given, so that the update is exact
 */
export function updated(
  before: Before,
  observations: readonly Comparable[],
  options: { robust?: boolean | undefined } = {},
): PosteriorBand {
  const scale = twoSided(before);
  return settled(observations, { scale, prior: priorOf(before, scale), kind: before.kind }, options);
}

/**
 * The band of what was seen alone, where no band is stated: a wide one, however alike the first few prices are.
 * @param observations at least one; which of asked and paid there is more of decides what the band is of
 */
export function seenAlone(
  observations: readonly Comparable[],
  options: { robust?: boolean | undefined } = {},
): PosteriorBand {
  const asked = observations.filter((one) => one.kind === 'asked').length;
  const kind = asked * 2 >= observations.length ? 'asked' : 'paid';
  // Logarithms counted from the median of what was seen: only where the scale begins, it weighs nothing.
  const scale = { middle: Math.log(median(observations.map(({ price }) => price))), below: 1, above: 1 };
  const offset = kind === 'asked' ? PAID_BELOW_ASKED : -PAID_BELOW_ASKED;
  const { spread, freedom } = UNKNOWN;
  const prior = { means: [0, offset], worth: [0, OFFSET_WORTH], freedom, variance: spread ** 2 };
  return settled(observations, { scale, prior, kind }, options);
}

interface Start {
  scale: TwoSided;
  prior: Prior;
  kind: 'asked' | 'paid';
}

function settled(
  observations: readonly Comparable[],
  { scale, prior, kind: own }: Start,
  options: { robust?: boolean | undefined },
): PosteriorBand {
  const rows = observations.map(({ kind }) => rowOf(kind, own));
  const even = observations.map(({ price }) => toEven(price, scale));
  const given = observations.map(({ weight }) => weight);
  const robust = options.robust !== false && rows.length > 0;
  let counted = robust ? firstWeights(prior, rows, even, given) : given;
  let found = solved(prior, rows, even, counted);
  for (let round = 0; robust && round < ROUNDS; round++) {
    const kept = outlierWeights(prior, found, rows, even, given, counted);
    const next = given.map((weight, i) => weight * kept[i]!);
    const moved = next.reduce((most, weight, i) => Math.max(most, Math.abs(weight - counted[i]!)), 0);
    counted = next;
    found = solved(prior, rows, even, counted);
    if (moved < SETTLED) break;
  }
  return { scale, posterior: found, kind: own, counted };
}

function firstWeights(
  prior: Prior,
  rows: readonly (readonly number[])[],
  even: readonly number[],
  given: readonly number[],
): number[] {
  const shifted = even.map((value, i) => value - rows[i]![1]! * prior.means[1]!);
  const { at, scale } = robustStart(prior, shifted);
  return given.map((weight, i) => weight * keptAt(Math.abs(shifted[i]! - at) / scale));
}

/**
 * The update. Prices of one kind share a design row, so that they stand as one observation: their weighted mean, with all
 * their weight; how far they lie from it goes to what is left over. That is the same sum of squares, in two rows.
 */
function solved(
  prior: Prior,
  rows: readonly (readonly number[])[],
  even: readonly number[],
  weights: readonly number[],
): Posterior {
  const together = [...new Set(rows)].map((row) => meanOf(row, rows, even, weights));
  const found = posterior(
    prior,
    together.map(({ row }) => row),
    together.map(({ mean }) => mean),
    together.map(({ weight }) => weight),
    together.reduce((sum, { squares }) => sum + squares, 0),
  );
  // A price that nothing is known of before has been seen at least once, so that nothing is left undetermined.
  if (!found) throw new Error('neither a prior nor an observation');
  return found;
}

function meanOf(
  row: readonly number[],
  rows: readonly (readonly number[])[],
  even: readonly number[],
  weights: readonly number[],
): { row: readonly number[]; mean: number; weight: number; squares: number } {
  let [weight, mean, squares] = [0, 0, 0];
  // Welford's way: no small difference of large sums.
  for (let i = 0; i < rows.length; i++) {
    if (rows[i] !== row || weights[i] === 0) continue;
    const away = even[i]! - mean;
    weight += weights[i]!;
    mean += (away * weights[i]!) / weight;
    squares += weights[i]! * away * (even[i]! - mean);
  }
  return { row, mean, weight, squares };
}

/** A price of the band's own kind, or of the other, with the offset between them. */
export function rowOf(kind: 'asked' | 'paid', own: 'asked' | 'paid'): readonly number[] {
  return kind === own ? OWN : OTHER;
}

const OWN = [1, 0];
const OTHER = [1, 1];

/** The price below which such a thing is asked for (or paid) with probability p. */
export function priceAt(band: PosteriorBand, p: number, kind = band.kind): number {
  return fromEven(quantileOf(predictive(band.posterior, rowOf(kind, band.kind)), p), band.scale);
}

/** The probability that such a thing is asked for (or paid) at no more than this price. */
export function shareAtMost(band: PosteriorBand, price: number, kind = band.kind): number {
  return shareBelowOf(predictive(band.posterior, rowOf(kind, band.kind)), toEven(price, band.scale));
}
