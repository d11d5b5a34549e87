import type { Knowledge, ModelKnown, PackKnown } from '../pack/knowledge';

/** The packs that speak of a kind: its own, and the one that this extends. What another club says is of its makers. */
export function packsOfKind(model: ModelKnown, { packs }: Knowledge): PackKnown[] {
  const own = packs.find(({ id }) => id === model.pack);
  return packs.filter(({ id }) => id === model.pack || id === own?.about.extends);
}
