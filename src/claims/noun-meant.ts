import type { Hit } from './hits';
import { clauseAt, type TextPart } from './part-text';

/** Where an English noun phrase ends: what follows is no longer what an adjective before it speaks of. */
const ENDS = new Set(
  (
    'and or but with without for in on at of to from by as is was are were has have had it its this that which who will would can could so than when if ' +
    'because while since throughout inside outside everywhere instead underneath all over under up out not no very quite really too also only just my your his her our their the a an'
  ).split(' '),
);
/** Heads that are the thing, or something said of it. */
const OF_THE_THING = new Set(
  (
    'machine machines model one beast workhorse tool piece item gem beauty classic example head version type unit quality strength grade power powered ' +
    'performance stitching stitch stitcher build built construction weight size finish condition capability capabilities standard standards look feel ' +
    'sewing sewer portable treadle electric straight zigzag domestic cast iron metal aluminium aluminum alloy vintage old antique condition spec duty made girl lady'
  ).split(' '),
);
const LONGEST = 4;

/**
 * "Industrial estate", "lightweight fabrics", "heavy duty thread": an adjective is of the noun that ends its phrase. Is
 * that noun something else than the thing on sale? English only: other languages bend or join their words.
 * @returns the noun as it is written, or null when the thing is meant.
 */
export function otherNounMeant(part: TextPart, hit: Hit, isNamed: (token: number) => boolean): string | null {
  const clause = clauseAt(part, hit.firstToken);
  if (!clause) return null;
  let head = -1;
  for (let i = hit.lastToken + 1; i <= clause.last && i - hit.lastToken <= LONGEST; i++) {
    const token = part.tokens[i]!;
    if (token.kind === 'mark' && token.folded === '-') continue;
    if (token.kind !== 'word' || ENDS.has(token.folded)) break;
    // A capital or a number is of a name, which is the thing's.
    const isName = /^\p{Lu}/u.test(part.text.slice(token.start, token.start + 2));
    if (OF_THE_THING.has(token.folded) || isNamed(i) || isName) return null;
    head = i;
  }
  return head < 0 ? null : part.text.slice(part.tokens[head]!.start, part.tokens[head]!.end);
}
