import type { Knowledge } from '../pack/knowledge';
import type { PriceBand, SeenPrice } from '../price/price-band';
import type { PriceReport, PriceSeen } from './types';
import { say } from './words';

export function bandTold(band: PriceBand): NonNullable<PriceReport['band']> {
  return {
    ...{ low: rounded(band.low), mid: rounded(band.mid), high: rounded(band.high) },
    half: { low: rounded(band.half.low), high: rounded(band.half.high) },
    ...{ currency: band.currency, kind: band.kind, grade: band.grade, askedToPaid: rounded(band.askedToPaid) },
    ...{ observations: band.observations, effective: rounded(band.effective), stated: band.stated?.worth ?? 0 },
  };
}

/** The prices that were looked at, those that count for most first. */
export function seenTold({ seen, model }: PriceBand, knowledge: Knowledge, most: number): PriceSeen[] {
  const grades = knowledge.packs.find((pack) => pack.id === model.pack)?.grades ?? [];
  return [...seen]
    .sort((a, b) => b.counted - a.counted)
    .slice(0, most)
    .map((one) => priceSeen(one, knowledge, (id) => grades.find((grade) => grade.id === id)));
}

function priceSeen(
  { seen, pack, price, counted, pull, leftOut }: SeenPrice,
  knowledge: Knowledge,
  gradeOf: (id: string) => { label: Parameters<typeof say>[0] } | undefined,
): PriceSeen {
  const grade = seen.grade === undefined ? undefined : gradeOf(seen.grade);
  return {
    ...{ pack: pack?.id ?? null, entry: pack?.entry ?? null, source: pack?.source ?? null },
    ...{ model: seen.model, label: knowledge.models.get(seen.model)?.label ?? seen.model },
    ...{ kind: seen.kind, amount: seen.amount, currency: seen.currency, date: seen.date },
    ...{ place: seen.place ?? null, link: seen.link ?? null, note: seen.note ?? null },
    grade: grade ? say(grade.label) : (seen.grade ?? null),
    ...{ price: price === null ? null : rounded(price), counted: rounded(counted), pull: rounded(pull), leftOut },
  };
}

export function rounded(value: number): number {
  return Math.round(value * 1e4) / 1e4;
}
