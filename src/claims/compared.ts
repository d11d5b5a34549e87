import type { ClauseRange, TextPart } from './part-text';

const WITHIN = 5;
const FIRST_AS = new Set(['as', 'so', 'aussi']);
const SECOND_AS = new Set(['as', 'wie', 'que', 'qu', "qu'"]);

/** "As quiet as a rotary hook", "aussi solide que la fonte": the second "as" stands shortly before. */
export function isCompared(part: TextPart, clause: ClauseRange, first: number): boolean {
  const { tokens } = part;
  const from = Math.max(clause.first, first - WITHIN);
  let second = first - 1;
  while (second >= from && !SECOND_AS.has(tokens[second]!.folded)) second--;
  if (second < from) return false;
  for (let i = Math.max(clause.first, second - WITHIN); i < second; i++)
    if (FIRST_AS.has(tokens[i]!.folded)) return true;
  return false;
}
