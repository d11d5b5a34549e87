import type { Knowledge, NameKnown } from '../pack/knowledge';
import { findSerialShapes } from '../quantity/serials';
import type { TextPart } from './part-text';

/** The packs of whose makers, families or models an advert names one anywhere. */
export function packsNamed(parts: readonly TextPart[], knowledge: Knowledge): Set<string> {
  const named: NameKnown[] = [];
  for (const part of parts) for (const { value } of knowledge.names.search(part.tokens)) named.push(value);
  const packs = new Set<string>();
  for (const { stands, of } of named) if (stands === 'alone') packs.add(packOf(of));
  for (const pack of packsOfSerials(parts, knowledge)) packs.add(pack);
  for (const pack of packsOfSeveral(named)) packs.add(pack);
  return packs;
}

export function packOf(of: NameKnown['of']): string {
  if ('maker' in of) return of.pack;
  return 'model' in of ? of.model.pack : of.family.pack;
}

/** Two of a pack's short names vouch for each other: "fits Q 7 and Q 9". */
function packsOfSeveral(named: readonly NameKnown[]): string[] {
  const models = new Map<string, Set<string>>();
  for (const { stands, of } of named) {
    if (stands !== 'named' || !('model' in of)) continue;
    const { pack, ref } = of.model;
    models.set(pack, (models.get(pack) ?? new Set()).add(ref));
  }
  return [...models].flatMap(([pack, refs]) => (refs.size > 1 ? [pack] : []));
}

/** A number with letters that lies in a table names the table's pack as well as a maker's name does. */
function packsOfSerials(parts: readonly TextPart[], knowledge: Knowledge): string[] {
  const packs: string[] = [];
  for (const { text } of parts)
    for (const { normal, end } of findSerialShapes(text)) {
      const lettered = withLetters(normal, text.slice(end, end + LONGEST_SUFFIX));
      if (lettered !== null) for (const { pack } of knowledge.serials.find(lettered)) packs.push(pack);
    }
  return packs;
}

const LONGEST_SUFFIX = 4;

/** A number as it has letters: its own, or those set apart behind it ("1150338 N"); null where it has none. */
function withLetters(normal: string, after: string): string | null {
  if (/[A-Z]/.test(normal)) return normal;
  const suffix = /^ ?([A-Z]{1,2})(?![\p{L}\p{N}])/u.exec(after)?.[1];
  return suffix === undefined ? null : normal + suffix;
}
