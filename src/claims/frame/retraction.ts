import type { Hit } from '../hits';
import { type ClauseRange, clauseIndexAt, type TextPart } from '../part-text';

const TAKES_BACK =
  /^(?:wrong|wrongly|mistake|mistaken|mistakenly|myth|incorrect|incorrectly|untrue|correction|typo|nonsense|unsinn|quatsch|blodsinn|betise|betises|mislabelled|mislabeled|misdescribed|falsely|erroneously|falsch|irrtum|irrtumlich|falschlich|erreur|faux)$/;
const NOT_WRONG = /^(?:go|going|goes|nothing|anything|what's|can't|cannot|never|nichts)$/;
/** A sentence of nothing but these takes back the one before it: "Not so.", "It isn't.", "Stimmt nicht." */
const EMPTY =
  /^(?:wrong|not|no|so|true|untrue|nonsense|rubbish|false|it|they|that|this|these|is|was|are|were|at|all|nope|of|course|falsch|stimmt|nein|das|nicht|ist|es|faux|non|c'est|pas|vrai|ce|n'est|isn't|aren't|wasn't|weren't|ain't)$/;
const DENIES =
  /^(?:not|isn't|aren't|wasn't|weren't|ain't|wrong|untrue|nonsense|rubbish|false|nope|no|nicht|falsch|nein|faux|non|pas)$/;

/** "…, which is wrong", "Wrong.", "EDIT: …": the advert itself takes back what it says there. The word that does. */
export function retracted(part: TextPart, clause: ClauseRange, hit: Hit): string | null {
  const at = clauseIndexAt(part, clause.first);
  // "The book is wrong: it is …": what comes after the word is what is right.
  let i = at;
  for (; i < part.clauses.length && part.clauses[i]!.sentence === clause.sentence && i - at < 20; i++) {
    const found = within(part, part.clauses[i]!, hit);
    if (found !== null) return found;
  }
  const next = part.clauses[i];
  if (!next) return null;
  if (part.clauses[i + 1]?.sentence === next.sentence) return null;
  const words = part.tokens.slice(next.first, next.last + 1).filter((token) => token.kind !== 'mark');
  const denies = words.find((token) => DENIES.test(token.folded));
  return denies && words.every((token) => EMPTY.test(token.folded)) ? part.text.slice(denies.start, denies.end) : null;
}

function within(part: TextPart, clause: ClauseRange, hit: Hit): string | null {
  for (let i = clause.first; i <= clause.last; i++) {
    const { folded, start, end } = part.tokens[i]!;
    if (!TAKES_BACK.test(folded) || (i >= hit.firstToken && i <= hit.lastToken)) continue;
    if (!NOT_WRONG.test(part.tokens[i - 1]?.folded ?? '')) return part.text.slice(start, end);
  }
  return null;
}
