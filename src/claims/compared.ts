import type { ClauseRange, TextPart } from './part-text';

const WITHIN = 5;
const FIRST_AS = new Set(['as', 'so', 'aussi']);
/** "Plus que le point droit". */
const MORE = /^(?:plus|autre|mieux|moins|chose)$/;
const SECOND_AS = new Set(['as', 'wie', 'que', 'qu', "qu'"]);

/** "As quiet as a rotary hook", "aussi solide que la fonte": the second "as" stands shortly before. */
export function isCompared(part: TextPart, clause: ClauseRange, first: number): boolean {
  const { tokens } = part;
  if (isInItsBrackets(part, first)) return true;
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

const BRACKET_WITHIN = 12;
const NAMED_WITHIN = 6;

/** "Compared to my Name (alloy, 12 lb) this is iron": what stands in brackets is said of the other one. */
function isInItsBrackets({ tokens }: TextPart, first: number): boolean {
  let open = first - 1;
  while (open > 0 && first - open < BRACKET_WITHIN && !/^[()]$/.test(tokens[open]!.folded)) open--;
  if (tokens[open]?.folded !== '(') return false;
  const before = tokens.slice(Math.max(0, open - NAMED_WITHIN), open);
  const at = before.findIndex(({ folded }) => folded === 'compared');
  return at >= 0 && !before.slice(at).some(({ kind }) => kind === 'mark');
}
