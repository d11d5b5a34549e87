import { type ClauseRange, clauseIndexAt, firstWordOf, type TextPart } from './part-text';
import type { Found } from './triggers-in';

const WHAT = /^(?:what|what's|was|ce)$/;

/** Clauses of one list. */
const LONGEST_LIST = 40;
const CROSSES = /^(?:❌|✗|✘|✖|🚫|⛔|☐|▢|□)/u;
const MARKED = /^(?:❌|✗|✘|✖|🚫|⛔|☐|▢|□|✓|✔|✅|☑)/u;

/** "What it can't do: zigzag, drop feed, leather": a clause before the colon denies the whole list. */
export function isListedAsLacking(
  part: TextPart,
  clause: ClauseRange,
  triggersIn: (clause: ClauseRange) => readonly Found[],
): boolean {
  const { clauses } = part;
  const at = clauseIndexAt(part, clause.first);
  // "The booklet says neither: it is …": a statement of its own is no item of a list.
  const opening = clause.tokens.find(({ kind }) => kind === 'word');
  if (opening && /^(?:it|it's|this|she|sie|es|elle|il|c'est|mine)$/.test(opening.folded)) return false;
  for (let i = at - 1; i >= 0 && at - i <= LONGEST_LIST && clauses[i]!.sentence === clause.sentence; i--) {
    const before = clauses[i]!;
    if (before.tokens.at(-1)?.folded !== ':') continue;
    if (explains(before) || isAnswer(before)) return false;
    // "What it is not:".
    const isHeading = WHAT.test(before.tokens[firstWordOf(before.tokens)]?.folded ?? '');
    return triggersIn(before).some(({ value: { effect, side }, lastToken }) => {
      if (effect !== 'denies') return false;
      return isHeading || (side === 'before' && before.last - lastToken <= 3);
    });
  }
  return false;
}

/** "It isn't: cast iron", "ist sie aber nicht: Gusseisen": what follows says what it is instead. */
function explains({ tokens }: ClauseRange): boolean {
  const words = tokens.filter(({ kind }) => kind === 'word').map(({ folded }) => folded);
  const ofThis = words.some((word) => /^(?:it|it's|this|sie|es|elle|c'est)$/.test(word));
  if (/^(?:aber|but|mais)$/.test(words[0] ?? '') && words.length === 2) return /^(?:not|nicht|pas)$/.test(words[1]!);
  return ofThis && /^(?:not|isn't|nicht|pas)$/.test(words.at(-1) ?? '') && !WHAT.test(words[0]!);
}

/** "Long bobbins? Neither: class 66": an answer by itself, with what it is instead. */
function isAnswer({ tokens }: ClauseRange): boolean {
  const words = tokens.filter(({ kind }) => kind === 'word').map(({ folded }) => folded);
  return words.length === 1 && /^(?:neither|none|no|nope|nein|weder|non)$/.test(words[0]!);
}

/** "Zigzag: –": nothing is said of it. */
export function isLeftOpen({ tokens }: TextPart, last: number): boolean {
  const [colon, dash, next] = tokens.slice(last + 1, last + 4);
  return colon?.folded === ':' && dash?.folded === '-' && next?.kind !== 'word' && next?.kind !== 'number';
}

/**
 * A cross or an empty box before a list's line denies it, as a tick asserts it; so does a cross right behind the words
 * that end at `last`, where no mark stands before: "zigzag ✗ reverse ✓".
 */
export function isCrossed(part: TextPart, clause: ClauseRange, last: number): boolean {
  return isCrossedBefore(part, clause) || isCrossedBehind(part, clause, last);
}

function isCrossedBehind({ tokens }: TextPart, { first }: ClauseRange, last: number): boolean {
  const isMarked = MARKED.test(tokens[first]!.folded) || MARKED.test(tokens[first - 1]?.folded ?? '');
  return !isMarked && CROSSES.test(tokens[last + 1]?.folded ?? '');
}

function isCrossedBefore(part: TextPart, clause: ClauseRange): boolean {
  // Other signs may stand before it: "🧵 ❌ zigzag".
  const word = firstWordOf(clause.tokens);
  for (let i = clause.first + Math.max(0, word); i >= 0; i--) {
    const token = part.tokens[i]!;
    if (token.kind === 'break') return false;
    if (token.folded === ']' && part.tokens[i - 1]?.folded === '[') return true;
    if (CROSSES.test(token.folded)) return true;
    if (token.kind !== 'mark' && i < clause.first) return false;
  }
  return false;
}
