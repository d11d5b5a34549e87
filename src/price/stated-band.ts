import type { BandKnown, Knowledge } from '../pack/knowledge';

/** What a pack says that such a thing costs: low to high holds the central 80 %, mid is the median. */
export interface StatedBand {
  low: number;
  mid: number;
  high: number;
  currency: string;
  kind: 'asked' | 'paid';
  /** How many observations the pack's word is worth. */
  worth: number;
  /** Of when its prices are, ISO 8601. */
  date: string;
  /** The pack's entries that were used. */
  from: BandKnown[];
  /** The grade it is for, or null where the advert's grade isn't known. */
  grade: string | null;
}

/**
 * The pack's own band for a model in a condition grade. Where the grade isn't known: the usual grade's, else the one
 * grade's there is, else all of them as one wide band.
 * @param grade the grade's id in that pack, or null.
 * @returns null where the pack states no band for the model (or none for that grade).
 */
export function statedBand(model: string, grade: string | null, knowledge: Knowledge): StatedBand | null {
  const all = knowledge.bands.get(model) ?? [];
  if (all.length === 0) return null;
  const usual = usualGrade(all, knowledge);
  const asked = grade ?? usual;
  const fitting = asked === null ? all : all.filter((band) => band.def.grade === undefined || band.def.grade === asked);
  if (fitting.length === 0) return grade === null ? merged(all, null) : null;
  return merged(fitting, asked);
}

function usualGrade(bands: readonly BandKnown[], knowledge: Knowledge): string | null {
  const grades = knowledge.packs.find((pack) => pack.id === bands[0]?.pack)?.grades ?? [];
  return grades.find((grade) => grade.usual)?.id ?? null;
}

/** Several bands for one question: of one grade the newest speaks; of different grades all do, as one wide band. */
function merged(bands: readonly BandKnown[], grade: string | null): StatedBand | null {
  const currency = bands[0]!.def.currency;
  const same = bands.filter((band) => band.def.currency === currency);
  const newest = [...same].sort((a, b) => b.def.date.localeCompare(a.def.date));
  const used = grade === null ? newest : newest.slice(0, 1);
  const low = Math.min(...used.map((band) => band.def.low));
  const high = Math.max(...used.map((band) => band.def.high));
  const only = used.length === 1 ? used[0]!.def.mid : undefined;
  return {
    low,
    mid: only ?? Math.sqrt(low * high),
    high,
    currency,
    kind: used[0]!.def.kind ?? 'paid',
    worth: used.reduce((sum, band) => sum + (band.def.weight ?? 1), 0),
    date: used[0]!.def.date,
    from: used,
    grade,
  };
}
