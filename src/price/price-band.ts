import type { Knowledge, ModelKnown } from '../pack/knowledge';
import type { Rate } from '../pack/schema/prices';
import { comparing, type LeftOut, type PriceKnowledge, type Wanted } from './comparable';
import type { Observation } from './observation';
import { type Comparable, type PosteriorBand, priceAt, seenAlone, shareAtMost, updated } from './posterior-band';
import { pullsOf } from './pulls';
import { quantile } from './quantile';
import { convert, type RateKnown, ratesKnown } from './rates';
import { type OnRecord, relatedPrices } from './related-prices';
import { inMoneyOf, type Points } from './series';
import { seriesOf } from './series-of';
import { type StatedBand, statedBand } from './stated-band';

/** Of what the price is asked. */
export interface PriceQuestion {
  /** The same model in each pack that has it; the first that has a band speaks. */
  models: readonly ModelKnown[];
  /** A grade's id, or null where it isn't known. */
  grade: string | null;
  finish?: 'plain' | 'refinished' | undefined;
  /** What the factors that hold of it multiply the price by. */
  times?: number | undefined;
  /** ISO 8601 date. */
  asOf: string;
  /** The user's own observations, and rates that the user has typed in. */
  own?: readonly Observation[] | undefined;
  rates?: readonly Rate[] | undefined;
  /** In which currency the answer is wanted where no pack states a band. */
  currency?: string | null | undefined;
  /** false: no observation is held down for being far from the others. */
  robust?: boolean | undefined;
}

/** An observation that was looked at, and what became of it. */
export interface SeenPrice extends OnRecord {
  /** In today's money and the band's currency, made like the thing in question; null where it was left out. */
  price: number | null;
  /** What it counted for, 0 to 1. */
  counted: number;
  /** By what it multiplies the band's middle. */
  pull: number;
  leftOut: LeftOut | null;
}

export interface PriceBand {
  model: ModelKnown;
  grade: string | null;
  low: number;
  mid: number;
  high: number;
  /** The middle half. */
  half: { low: number; high: number };
  currency: string;
  /** Whether it is of prices asked or paid. */
  kind: 'asked' | 'paid';
  /** How many times what is paid is asked. */
  askedToPaid: number;
  /** How many observations were counted, and how many all that stands behind the band is worth. */
  observations: number;
  effective: number;
  stated: StatedBand | null;
  /** Plain quantiles of what was counted, from ten on: the middle, and what 80 of 100 lie between. */
  plain: { low: number; mid: number; high: number } | null;
  /** The index by which it is in today's money: its source and last date; null where there is none. */
  index: { source: string | null; last: string } | null;
  seen: readonly SeenPrice[];
  /** The probability that such a thing costs no more than this, in the band's currency. */
  share: (price: number) => number;
}

/** Without a stated band so many observations are the least that make one, weighing so much together. */
const LEAST_SEEN = { number: 3, weight: 1 };

/**
 * What such a thing costs: the pack's stated band, updated by prices on record and the user's own. Without any of those it
 * is exactly the stated one (in today's money where the pack has an index); without a stated one what was seen decides.
 * @returns null where no pack states a band and too little was seen
 */
export function priceBand(question: PriceQuestion, knowledge: Knowledge): PriceBand | null {
  const { models, asOf } = question;
  const model = models.find((one) => knowledge.bands.has(one.ref)) ?? models[0];
  if (!model) return null;
  const found = relatedPrices(models, knowledge, question.own ?? []);
  // What packs state is of plain ones.
  const stated = question.finish === 'refinished' ? null : statedBand(model.ref, question.grade, knowledge);
  const currency = stated?.currency ?? question.currency ?? commonest(found.map(({ seen }) => seen.currency));
  if (!currency) return null;
  const series = seriesOf('index', currency, model.pack, knowledge);
  const times = question.times ?? 1;
  const before = stated && inTodaysMoney(stated, series?.points ?? null, asOf, times);
  const grade = stated?.grade ?? question.grade;
  const wanted: Wanted = {
    models: new Set(models.map(({ ref }) => ref)),
    members: new Set(found.flatMap(({ of, seen }) => (of === 'member' ? [seen.model] : []))),
    ...{ grade, finish: question.finish ?? 'plain', currency, asOf },
  };
  const rates = ratesKnown(question.rates ?? [], knowledge);
  const known: PriceKnowledge = {
    rates,
    index: series?.points ?? null,
    mid: (ref, ofGrade) => statedMid(ref, ofGrade, currency, rates, asOf, knowledge),
  };
  const compare = comparing(wanted, known);
  const compared = found.map(({ seen }) => compare(seen));
  const usable: Comparable[] = compared.flatMap((one) =>
    'leftOut' in one ? [] : [{ ...one, price: one.price * times }],
  );
  const band = before
    ? updated({ ...before, worth: stated.worth, kind: stated.kind }, usable, { robust: question.robust })
    : enough(usable)
      ? seenAlone(usable, { robust: question.robust })
      : null;
  if (!band) return null;
  const exact = before && usable.length === 0 ? before : null;
  let told: SeenPrice[] | undefined;
  const counted = band.counted.reduce((sum, weight) => sum + weight, 0);
  return {
    model,
    grade,
    low: exact?.low ?? priceAt(band, 0.1),
    mid: exact?.mid ?? priceAt(band, 0.5),
    high: exact?.high ?? priceAt(band, 0.9),
    half: { low: priceAt(band, 0.25), high: priceAt(band, 0.75) },
    currency,
    kind: band.kind,
    askedToPaid: priceAt(band, 0.5, 'asked') / priceAt(band, 0.5, 'paid'),
    observations: usable.length,
    effective: (stated?.worth ?? 0) + counted,
    stated,
    plain: plainly(usable),
    index: series && { source: series.source, last: series.last },
    // Told only where somebody looks at them: of alternatives nobody does.
    get seen() {
      told ??= withOutcome(found, compared, usable, band);
      return told;
    },
    share: (price) => shareAtMost(band, price),
  };
}

const LEAST_PLAIN = 10;

function plainly(usable: readonly Comparable[]): PriceBand['plain'] {
  if (usable.length < LEAST_PLAIN) return null;
  const prices = usable.map(({ price }) => price);
  return { low: quantile(prices, 0.1), mid: quantile(prices, 0.5), high: quantile(prices, 0.9) };
}

function enough(usable: readonly Comparable[]): boolean {
  const weight = usable.reduce((sum, one) => sum + one.weight, 0);
  return usable.length >= LEAST_SEEN.number && weight >= LEAST_SEEN.weight;
}

/** The stated band in the money of the day, and of such a thing as the factors say that it is. */
function inTodaysMoney(
  { low, mid, high, date }: StatedBand,
  index: Points | null,
  asOf: string,
  times: number,
): { low: number; mid: number; high: number } {
  const by = ((index && inMoneyOf(1, index, date, asOf)) ?? 1) * times;
  return { low: low * by, mid: mid * by, high: high * by };
}

function statedMid(
  ref: string,
  grade: string | null,
  currency: string,
  rates: readonly RateKnown[],
  asOf: string,
  knowledge: Knowledge,
): number | null {
  const stated = statedBand(ref, grade, knowledge);
  return stated && convert(stated.mid, stated.currency, currency, rates, asOf);
}

function commonest(values: readonly string[]): string | null {
  const counts = new Map<string, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts].sort(([, a], [, b]) => b - a)[0]?.[0] ?? null;
}

function withOutcome(
  found: readonly OnRecord[],
  compared: readonly (Comparable | { leftOut: LeftOut })[],
  usable: readonly Comparable[],
  band: PosteriorBand,
): SeenPrice[] {
  const pulls = pullsOf(band, usable);
  let at = 0;
  return found.map((one, i) => {
    const outcome = compared[i]!;
    if ('leftOut' in outcome) return { ...one, price: null, counted: 0, pull: 1, leftOut: outcome.leftOut };
    const place = at++;
    return {
      ...one,
      ...{ price: usable[place]!.price, counted: band.counted[place]!, pull: pulls[place]!, leftOut: null },
    };
  });
}
