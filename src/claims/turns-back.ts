import type { ClauseRange, TextPart } from './part-text';

/** A clause that begins so speaks of the thing on sale again. Folded. */
const THIS_AGAIN = new Set(
  'this it mine ours here diese dieses dieser sie es meine hier unsere cette celle ce elle il ici'.split(' '),
);
const PRONOUN = /^(?:it|sie|es|elle|il)$/;
const CONTRASTS = new Set('but and though however aber und doch mais et'.split(' '));

/** "…, but this one has none": the first word, past a contrast, turns back to the thing. */
export function turnsBack(part: TextPart, clause: ClauseRange): boolean {
  let isJoined = false;
  for (let i = clause.first; i <= clause.last; i++) {
    const { kind, folded } = part.tokens[i]!;
    if (kind !== 'word') continue;
    // "The Name is finer, but it weighs more": the one just named.
    if (CONTRASTS.has(folded)) isJoined = true;
    else return THIS_AGAIN.has(folded) && !(isJoined && PRONOUN.test(folded));
  }
  return false;
}
