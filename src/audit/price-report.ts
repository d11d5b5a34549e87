import type { Reading } from '../claims/reading';
import type { Listing } from '../listing/types';
import type { Knowledge, ModelKnown } from '../pack/knowledge';
import { convert } from '../price/rates';
import { type StatedBand, shareBelow, statedBand } from '../price/stated-band';
import type { PriceReport, PriceStanding } from './types';

/** Outside the central 95 % it is above or below; between the band's end and there it is on the high or low side. */
const ABOVE = 0.975;
const HIGH_SIDE = 0.9;

const NO_BAND: PriceReport = { standing: 'no-band', ratio: null, probability: null, band: null };

/** Where the price stands on the stated band of the claimed model in the stated condition. */
export function priceReport(
  listing: Listing,
  reading: Reading,
  knowledge: Knowledge,
  asOf: string,
): { report: PriceReport; band: StatedBand | null; model: ModelKnown | null } {
  const model = reading.claimedModels.find((one) => knowledge.bands.has(one.ref)) ?? reading.claimedModels[0];
  if (reading.kind !== 'item') return { report: { ...NO_BAND, standing: 'not-comparable' }, band: null, model: null };
  if (!model) return { report: NO_BAND, band: null, model: null };
  const band = statedBand(model.ref, gradeOf(reading, model.pack, knowledge), knowledge);
  if (!band) return { report: NO_BAND, band: null, model };
  const shown = {
    low: band.low,
    mid: round(band.mid),
    high: band.high,
    currency: band.currency,
    observations: band.observations,
    effective: band.effective,
  };
  const asked = comparableAmount(listing, band, knowledge, asOf);
  if (asked === null)
    return { report: { standing: 'not-comparable', ratio: null, probability: null, band: shown }, band, model };
  const probability = shareBelow(band, asked);
  const report: PriceReport = {
    standing: standingOf(probability),
    ratio: round(asked / band.mid),
    probability: round(probability),
    band: shown,
  };
  return { report, band, model };
}

function standingOf(probability: number): PriceStanding {
  if (probability > ABOVE) return 'above';
  if (probability > HIGH_SIDE + 1e-6) return 'high-side';
  if (probability < 1 - ABOVE) return 'below';
  if (probability < 1 - HIGH_SIDE - 1e-6) return 'low-side';
  return 'within';
}

/** The asking price in the band's currency; null where there is none, it is a bid, or no rate is known. */
function comparableAmount(listing: Listing, band: StatedBand, knowledge: Knowledge, asOf: string): number | null {
  const { price } = listing;
  if (!price || price.how === 'bid' || price.currency === null) return null;
  const amount = Number(price.amount);
  if (!(amount > 0) || !Number.isFinite(amount)) return null;
  const rates = knowledge.packs.flatMap((pack) => pack.rates);
  return convert(amount, price.currency, band.currency, rates, asOf);
}

/** The condition grade by the advert's words: the field for it first, then title, then text; null where none is said. */
function gradeOf(reading: Reading, pack: string, knowledge: Knowledge): string | null {
  const base = knowledge.packs.find((one) => one.id === pack)?.about.extends;
  const said = reading.grades.filter(
    (grade) => (grade.pack === pack || grade.pack === base) && grade.stance === 'says' && grade.subject === 'this',
  );
  for (const field of ['condition', 'details', 'title', 'description']) {
    const here = new Set(said.filter((grade) => grade.field === field).map((grade) => grade.entry.id));
    if (here.size === 1) return [...here][0]!;
  }
  return null;
}

function round(value: number): number {
  return Math.round(value * 1e4) / 1e4;
}
