import type { Reading } from '../claims/reading';
import type { Stanced } from '../claims/types';
import type { Knowledge } from '../pack/knowledge';
import type { Factor } from '../pack/schema/prices';
import { sourceOf } from './source-of';

/** The condition grade by the advert's words: the field for it first, then title, then text; null where none is said. */
export function gradeSaid(reading: Reading, pack: string, knowledge: Knowledge): string | null {
  const said = reading.grades.filter((grade) => isOf(pack, grade.pack, knowledge) && isSaid(grade));
  for (const field of ['condition', 'details', 'title', 'description']) {
    const here = new Set(said.filter((grade) => grade.field === field).map((grade) => grade.entry.id));
    if (here.size === 1) return [...here][0]!;
  }
  return null;
}

/** Something that the advert says of the thing and that its price depends on. */
export interface FactorSaid {
  pack: string;
  entry: Factor;
  source: string | null;
  /** The advert's words for it. */
  said: Stanced;
}

/** Each factor once, however often it is said. */
export function factorsSaid(reading: Reading, pack: string, knowledge: Knowledge): FactorSaid[] {
  const found = new Map<Factor, FactorSaid>();
  for (const said of reading.factors) {
    if (found.has(said.entry) || !isOf(pack, said.pack, knowledge) || !isSaid(said)) continue;
    const source = sourceOf(knowledge, said.pack, said.entry.source);
    found.set(said.entry, { pack: said.pack, entry: said.entry, source, said });
  }
  return [...found.values()];
}

/** It says of itself what such things are priced apart for, as a refinished one. */
export function isPricedApart(reading: Reading, pack: string, knowledge: Knowledge): boolean {
  return reading.wordings.some(
    (wording) => wording.entry.pricedApart && isOf(pack, wording.pack, knowledge) && isSaid(wording),
  );
}

function isSaid({ stance, subject }: Stanced): boolean {
  return stance === 'says' && subject === 'this';
}

/** What a pack's base says holds for its models too. */
function isOf(pack: string, saidBy: string, knowledge: Knowledge): boolean {
  return saidBy === pack || saidBy === knowledge.packs.find((one) => one.id === pack)?.about.extends;
}
