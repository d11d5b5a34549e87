import type { Knowledge, ModelKnown } from '../pack/knowledge';
import type { Rate } from '../pack/schema/prices';
import type { Observation } from '../price/observation';
import { pastMoney } from '../price/past-money';
import { type PriceQuestion, priceBand } from '../price/price-band';
import { type PriceYear, priceYears } from '../price/price-years';
import { conversion, type RateKnown, ratesKnown } from '../price/rates';
import { type Alternative, alternativesTo, type Difference } from './alternatives';
import { inBandsCurrency, standingOf } from './price-report';
import { bandTold, rounded, seenTold } from './price-told';
import { sourceOf } from './source-of';
import type { NotComparable, PriceReport, PriceSeen, PriceStanding } from './types';
import { say } from './words';

/** A question for a price without an advert. */
export interface PriceAsked {
  /** packId/modelId */
  model: string;
  /** A grade's id, or null for the usual one. */
  grade: string | null;
  finish: 'plain' | 'refinished';
  asking: { amount: number; currency: string } | null;
  /** ISO 8601 date. */
  asOf: string;
  own: readonly Observation[];
  rates: readonly Rate[];
  /** false: no price is held down for being far from all others. */
  robust?: boolean | undefined;
}

/** A price of the past, of a date as far as it is known. */
export interface PastPrice {
  amount: number;
  currency: string;
  /** ISO 8601 */
  date: string;
}

/** A price of the past in words' numbers: in the money of the day, and in weeks of an average wage. */
export interface PastTold extends PastPrice {
  today: { amount: number; source: string | null; last: string } | null;
  weeks: { number: number; source: string | null; last: string } | null;
  source: string | null;
}

export interface PriceAnswer {
  schema: 1;
  model: string;
  label: string;
  grade: { id: string; label: string } | null;
  asOf: string;
  standing: PriceStanding;
  why: NotComparable | null;
  ratio: number | null;
  probability: number | null;
  converted: PriceReport['converted'];
  band: PriceReport['band'];
  /** Plain quantiles of the prices counted, from ten on; null below. */
  plain: { low: number; mid: number; high: number } | null;
  /** Where the stated band comes from: its pack, entry, date and source; null where no pack states one. */
  stated: { pack: string; entry: string; date: string; source: string | null } | null;
  /** The index that brought all of it into the money of the day; null without one. */
  index: { source: string | null; last: string } | null;
  /** All factors that packs know for such a thing. */
  factors: { id: string; text: string; times: number; source: string | null }[];
  /** The prices that were looked at, those that count for most first, and how many there were. */
  seen: PriceSeen[];
  looked: number;
  /** How the price went over the years, from ten prices on: each year's middle in today's money; empty below. */
  years: PriceYear[];
  /** What it cost when it was new. */
  launch: PastTold | null;
  /** What such a thing is good for, and what it can't do. */
  suits: { good: string[]; poor: string[] };
  alternatives: {
    model: string;
    label: string;
    common: string[];
    differs: Difference[];
    band: PriceReport['band'];
    /** Where its band is of another currency than this one's: its ends in this one's; null without a rate. */
    here: { low: number; high: number; currency: string } | null;
  }[];
}

/**
 * What a model in a grade costs, where an asking price stands, and what else would do. Pure.
 * @param mostSeen so many of the prices that were looked at are told
 * @returns null where no pack knows the model
 */
export function priceEnquiry(
  asked: PriceAsked,
  knowledge: Knowledge,
  mostSeen = Number.POSITIVE_INFINITY,
): PriceAnswer | null {
  const model = knowledge.models.get(asked.model);
  if (!model) return null;
  const question: PriceQuestion = {
    ...{ models: [model], grade: asked.grade, finish: asked.finish, asOf: asked.asOf, own: asked.own },
    ...{ rates: asked.rates, robust: asked.robust, currency: asked.asking?.currency ?? null },
  };
  const band = priceBand(question, knowledge);
  const pack = knowledge.packs.find((one) => one.id === model.pack)!;
  const grade = pack.grades.find((one) => one.id === (band?.grade ?? asked.grade));
  const from = band?.stated?.from[0];
  const rates = ratesKnown(asked.rates, knowledge);
  const placed =
    band && asked.asking && inBandsCurrency(asked.asking.amount, asked.asking.currency, band, rates, asked.asOf);
  const there = typeof placed === 'object' ? placed : null;
  const probability = there && band!.share(there.amount);
  const why = typeof placed === 'string' ? placed : band && !asked.asking ? 'no-price' : null;
  return {
    ...{ schema: 1, model: model.ref, label: model.label, asOf: asked.asOf },
    grade: grade ? { id: grade.id, label: say(grade.label) } : null,
    standing: probability !== null ? standingOf(probability) : band ? 'not-comparable' : 'no-band',
    why,
    ratio: there && rounded(there.amount / band!.mid),
    probability: probability === null ? null : rounded(probability),
    converted: there?.converted ?? null,
    band: band && bandTold(band),
    plain: band?.plain ?? null,
    stated: from ? { pack: from.pack, entry: from.entry, date: from.def.date, source: from.source } : null,
    index: band?.index ?? null,
    factors: pack.factors.map(({ id, label, times, source }) => ({
      ...{ id, text: say(label), times, source: sourceOf(knowledge, pack.id, source) },
    })),
    seen: band ? seenTold(band, knowledge, mostSeen) : [],
    looked: band?.seen.length ?? 0,
    years: band ? priceYears(band) : [],
    launch: launchTold(asked, knowledge),
    suits: suitsOf(model, knowledge),
    alternatives: alternativesTo(model, question, knowledge).map((other) =>
      alternativeTold(other, band?.currency ?? null, rates, asked.asOf),
    ),
  };
}

function alternativeTold(
  { model, common, differs, band }: Alternative,
  currency: string | null,
  rates: readonly RateKnown[],
  asOf: string,
): PriceAnswer['alternatives'][number] {
  const by = currency === null || currency === band.currency ? null : conversion(band.currency, currency, rates, asOf);
  const here = by && { low: rounded(band.low * by.times), high: rounded(band.high * by.times), currency: currency! };
  return { model: model.ref, label: model.label, common, differs, band: bandTold(band), here };
}

function launchTold({ model: ref, asOf }: PriceAsked, knowledge: Knowledge): PastTold | null {
  const { pack, def } = knowledge.models.get(ref)!;
  if (!def.launchPrice) return null;
  const { amount, currency, year, source } = def.launchPrice;
  const cited = sourceOf(knowledge, pack, source);
  return pastTold({ amount, currency, date: String(year) }, pack, asOf, knowledge, cited);
}

/**
 * What a price of the past comes to: in the money of the day, and in weeks of an average wage of its own time.
 * @param pack the pack whose series are asked first; null: any
 * @returns null for what is no price, or of a date that has not come yet
 */
export function pastTold(
  price: PastPrice,
  pack: string | null,
  asOf: string,
  knowledge: Knowledge,
  source: string | null = null,
): PastTold | null {
  const past = pastMoney(price, pack, asOf, knowledge);
  if (!past) return null;
  const { today, weeks } = past;
  return {
    ...{ ...price, source },
    today: today && { amount: today.amount, source: today.index.source, last: today.index.last },
    weeks: weeks && { number: weeks.number, source: weeks.wages.source, last: weeks.wages.last },
  };
}

/** By the model's own entry, else by that of its kind. */
function suitsOf({ def, pack }: ModelKnown, { models }: Knowledge): PriceAnswer['suits'] {
  const type =
    def.type === undefined ? undefined : models.get(def.type.includes('/') ? def.type : `${pack}/${def.type}`);
  const { good = [], poor = [] } = def.suits ?? type?.def.suits ?? {};
  return { good: good.map(say), poor: poor.map(say) };
}
