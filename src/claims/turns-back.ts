import type { ClauseRange, TextPart } from './part-text';

/** A clause that begins so speaks of the thing on sale again. Folded. */
const THIS_AGAIN = new Set(
  'this it mine ours here diese dieses dieser sie es meine hier unsere cette celle ce elle il ici'.split(' '),
);
const CONTRASTS = new Set('but and though however aber und doch mais et'.split(' '));

/** "…, but this one has none": the first word, past a contrast, turns back to the thing. */
export function turnsBack(part: TextPart, clause: ClauseRange): boolean {
  const words = part.tokens.slice(clause.first, clause.last + 1).filter((token) => token.kind === 'word');
  const first = words.find((token) => !CONTRASTS.has(token.folded));
  return first !== undefined && THIS_AGAIN.has(first.folded);
}
