import type { Knowledge } from '../pack/knowledge';

/**
 * The citation, as a person reads it, of what an entry of a pack gives as its source.
 * @param pack the pack's id
 * @param source the source's id within that pack; undefined where the entry gives none
 * @returns null where the entry gives none, or the pack doesn't know it
 */
export function sourceOf(knowledge: Pick<Knowledge, 'packs'>, pack: string, source: string | undefined): string | null {
  if (source === undefined) return null;
  return knowledge.packs.find(({ id }) => id === pack)?.citations.get(source) ?? null;
}
