import type { Reading } from '../claims/reading';
import type { Candidate } from '../identify/identify';
import type { Listing } from '../listing/types';
import type { Knowledge, ModelKnown } from '../pack/knowledge';
import type { Rate } from '../pack/schema/prices';
import { MOST_AMOUNT, type Observation } from '../price/observation';
import { type PriceBand, priceBand } from '../price/price-band';
import { conversion, type RateKnown, ratesKnown } from '../price/rates';
import { findMoney, readMoney } from '../quantity/money';
import { bandTold, rounded, seenTold } from './price-told';
import { type FactorSaid, factorsSaid, gradeSaid, isPricedApart } from './price-words';
import type { NotComparable, PriceReport, PriceStanding } from './types';
import { say } from './words';

/** Outside the central 95 % it is above or below; between the band's end and there it is on the high or low side. */
const ABOVE = 0.975;
const HIGH_SIDE = 0.9;
/** Where the advert names no model, a kind of thing that it is at least so likely to be is asked for. */
const LIKELY = 0.5;
/** So many of the prices looked at are told, those that count for most first. */
const MOST_SEEN = 60;

const NO_BAND: PriceReport = {
  ...{ standing: 'no-band', why: null, ratio: null, probability: null, band: null, converted: null },
  ...{ taken: null, factors: [], seen: [] },
};

export interface PriceCase {
  report: PriceReport;
  band: PriceBand | null;
  model: ModelKnown | null;
  factors: readonly FactorSaid[];
}

export interface PriceInput {
  listing: Listing;
  reading: Reading;
  knowledge: Knowledge;
  /** ISO 8601 date. */
  asOf: string;
  candidates: readonly Candidate[];
  /** The user's own observations and rates. */
  observations: readonly Observation[];
  rates: readonly Rate[];
}

/** Where the price stands on the band of the claimed model in the stated condition. */
export function priceReport(input: PriceInput): PriceCase {
  const { listing, reading, knowledge } = input;
  if (reading.kind !== 'item') {
    const report: PriceReport = { ...NO_BAND, standing: 'not-comparable', why: 'kind' };
    return { report, band: null, model: null, factors: [] };
  }
  const models = modelsAsked(input);
  const model = models[0];
  if (!model) return { report: NO_BAND, band: null, model: null, factors: [] };
  const grade = gradeSaid(reading, model.pack, knowledge);
  const factors = factorsSaid(reading, model.pack, knowledge);
  const apart = isPricedApart(reading, model.pack, knowledge);
  const question = {
    ...{ models, grade, asOf: input.asOf, own: input.observations, rates: input.rates },
    currency: listing.price?.currency ?? null,
  };
  const times = factors.reduce((product, { entry }) => product * entry.times, 1);
  // Refinished ones are held against refinished ones, if enough of those have been seen; their band needs no factor.
  const ofApart = apart ? priceBand({ ...question, finish: 'refinished' }, knowledge) : null;
  const band = ofApart ?? priceBand({ ...question, times: apart ? 1 : times }, knowledge);
  if (!band) return { report: NO_BAND, band: null, model, factors };
  const told = { factors: factors.map(factorTold), seen: seenTold(band, knowledge, MOST_SEEN), band: bandTold(band) };
  const asked = apart && !ofApart ? 'priced-apart' : comparableAmount(input, band);
  if (typeof asked === 'string') {
    const report: PriceReport = { ...NO_BAND, ...told, standing: 'not-comparable', why: asked };
    return { report, band, model, factors };
  }
  const probability = band.share(asked.amount);
  const report: PriceReport = {
    ...{ standing: standingOf(probability), why: null },
    ...{
      ratio: rounded(asked.amount / band.mid),
      probability: rounded(probability),
      ...{ converted: asked.converted, taken: asked.taken },
      ...told,
    },
  };
  return { report, band, model, factors };
}

/** The claimed model in each pack that has it, the one with a band first; without any the kind that it likely is. */
function modelsAsked({ reading: { claimedModels }, knowledge, candidates }: PriceInput): ModelKnown[] {
  const first = claimedModels.find((one) => knowledge.bands.has(one.ref)) ?? claimedModels[0];
  if (first) return [first, ...claimedModels.filter((one) => one.pack !== first.pack)];
  const likeliest = candidates[0];
  return likeliest?.model?.isType && likeliest.probability >= LIKELY ? [likeliest.model] : [];
}

export function standingOf(probability: number): PriceStanding {
  if (probability > ABOVE) return 'above';
  if (probability > HIGH_SIDE + 1e-6) return 'high-side';
  if (probability < 1 - ABOVE) return 'below';
  if (probability < 1 - HIGH_SIDE - 1e-6) return 'low-side';
  return 'within';
}

/** The asking price in the band's currency, or why it can't be held against it. */
function comparableAmount(
  { listing, knowledge, rates, asOf }: PriceInput,
  band: PriceBand,
): (Placed & { taken: string | null }) | NotComparable {
  const { price } = listing;
  if (!price) return 'no-price';
  if (price.how === 'bid') return 'bid';
  const taken = price.currency === null && mayBeIn(band.currency, listing) ? band.currency : null;
  const currency = price.currency ?? taken;
  if (currency === null) return 'currency';
  const there = inBandsCurrency(Number(price.amount), currency, band, ratesKnown(rates, knowledge), asOf);
  return typeof there === 'string' ? there : { ...there, taken };
}

/** Is the price written with a sign that several currencies share, and this is one of them? Of a bare number nothing is. */
function mayBeIn(currency: string, { price, priceText, language }: Listing): boolean {
  const isSigned = findMoney(priceText, { language }).some((money) => money.amount === price?.amount);
  const money = isSigned ? readMoney(priceText, { currency, language }) : null;
  return money?.currency === currency && money.amount === price?.amount;
}

/** A price in the band's currency, and how it was brought there; null where it was of that currency. */
export interface Placed {
  amount: number;
  converted: PriceReport['converted'];
}

export function inBandsCurrency(
  amount: number,
  currency: string,
  band: PriceBand,
  rates: readonly RateKnown[],
  asOf: string,
): Placed | NotComparable {
  if (!(amount > 0) || !(amount < MOST_AMOUNT)) return 'amount';
  if (currency === band.currency) return { amount, converted: null };
  const by = conversion(currency, band.currency, rates, asOf);
  if (!by) return 'no-rate';
  const there = amount * by.times;
  return { amount: there, converted: { from: currency, to: band.currency, amount: rounded(there), ...by } };
}

function factorTold({ pack, entry, source }: FactorSaid): PriceReport['factors'][number] {
  return { pack, entry: entry.id, kind: entry.kind, text: say(entry.label), times: entry.times, source };
}
