import type { ClauseRange, TextPart } from './part-text';

const WITHIN = 5;
const FIRST_AS = new Set(['as', 'so', 'aussi']);
/** "Plus que le point droit". */
const MORE = /^(?:plus|autre|mieux|moins|chose)$/;
const SECOND_AS = new Set(['as', 'wie', 'que', 'qu', "qu'"]);

/** "As quiet as a rotary hook", "aussi solide que la fonte": the second "as" stands shortly before. */
export function isCompared(part: TextPart, clause: ClauseRange, first: number): boolean {
  const { tokens } = part;
  const from = Math.max(clause.first, first - WITHIN);
  // "Le zigzag aussi bien que le point droit": a phrase may begin with the second one.
  let second = SECOND_AS.has(tokens[first]!.folded) ? first : first - 1;
  if (second === first && MORE.test(tokens[first - 1]?.folded ?? '')) return true;
  while (second >= from && !SECOND_AS.has(tokens[second]!.folded)) second--;
  if (second < from) return false;
  for (let i = Math.max(clause.first, second - WITHIN); i < second; i++)
    if (FIRST_AS.has(tokens[i]!.folded)) return true;
  return false;
}
