import type { Token } from '../text/tokens';

/** Letters and digits written as one code ("K 20-417"), by its first and last token. */
export interface Code {
  first: number;
  last: number;
  /** Letters before the digits, folded. */
  letters: string;
  /** Groups of digits as they are separated. */
  groups: readonly string[];
  /** All digits together. */
  digits: number;
  /** The writer left the rest out: "K20xxx", "K20***". */
  isCut: boolean;
}

const LONGEST_LETTERS = 3;
const MOST_GROUPS = 8;
const JOINTS = new Set(['-', '.', '/']);
/** Abbreviations that stand before numbers without being part of them, glued or not. */
const NEVER_LETTERS = new Set('no nr num sn pat art ref ser tel mk mod typ lot vol eur usd gbp chf'.split(' '));
/** Short words that happen to stand before a number, where a space parts them. */
const SMALL_WORDS = new Set(
  (
    'n a i in on at of to is by or for the and my we it an as with der die das am im um bis von und ca c le la de du en et les des est ' +
    'rs kr kg cm mm lb lbs oz ft st pin was has had new x'
  ).split(' '),
);

/** A short word that, before a number, says nothing of a serial ("in 1954", "no. 20417"). */
export function isSmallWord(folded: string): boolean {
  return SMALL_WORDS.has(folded) || NEVER_LETTERS.has(folded);
}

/** Letters taken for digits: what stands among digits and looks like one. */
const LIKE_DIGITS = /^[oilszbgq]{1,2}$/;
const CAPITALS = /^\p{Lu}+$/u;
const LEFT_OUT_WORD = /^x{2,}$/;
const LEFT_OUT_MARKS = new Set(['*', '…', '...', '_', '#']);
const OTHER_QUANTITY = /^ ?(?:[€£$¥%]|(?:eur|euro|kg|g|lbs?|cm|mm|in|v|w|stitches|pounds|quid)(?![\p{L}]))/iu;

function isNumber(token: Token | undefined): token is Token & { kind: 'number' } {
  return token?.kind === 'number' && /^\d+$/.test(token.folded);
}

/** Do the letters at `at` belong to the number after them? Returns where that number is, or -1. */
function numberAfterLetters(text: string, tokens: readonly Token[], at: number, isCalled: boolean): number {
  const letters = tokens[at]!;
  const next = tokens[at + 1];
  if (letters.folded.length > LONGEST_LETTERS || next === undefined || next.kind === 'word') return -1;
  if (!/^[a-z]+$/.test(letters.folded) || NEVER_LETTERS.has(letters.folded)) return -1;
  if (isNumber(next)) {
    const written = text.slice(letters.start, letters.end);
    const isWord = SMALL_WORDS.has(letters.folded) && (!isCalled || !CAPITALS.test(written));
    const mayStandApart = !isWord && (CAPITALS.test(written) || (isCalled && written.length === 1));
    return next.glued || mayStandApart ? at + 1 : -1;
  }
  const joined =
    next.kind === 'mark' && next.glued && JOINTS.has(next.folded) && isNumber(tokens[at + 2]) && tokens[at + 2]!.glued;
  return joined ? at + 2 : -1;
}

/** "20-417", "20.417", "20 417", "1,234,567", "2O417" where it is called a serial: the token of the next group, or -1. */
function nextGroup(
  text: string,
  tokens: readonly Token[],
  last: number,
  groups: readonly string[],
  isCalled: boolean,
): number {
  const next = tokens[last + 1];
  if (isCalled && next?.kind === 'word' && next.glued && LIKE_DIGITS.test(next.folded))
    return isNumber(tokens[last + 2]) && tokens[last + 2]!.glued ? last + 1 : -1;
  if (isNumber(next) && next.glued) return isCalled ? last + 1 : -1;
  if (isNumber(next) && !next.glued) {
    const inThrees =
      next.folded.length === 3 && groups[0]!.length <= 3 && groups.slice(1).every((group) => group.length === 3);
    return inThrees && !OTHER_QUANTITY.test(text.slice(next.end, next.end + 12)) ? last + 1 : -1;
  }
  const after = tokens[last + 2];
  if (next?.kind !== 'mark' || !next.glued || !isNumber(after) || !after.glued) return -1;
  const inThrees = next.folded === ',' && after.folded.length === 3;
  return JOINTS.has(next.folded) || inThrees ? last + 2 : -1;
}

/** Does the code go on in a way that shows the writer left the rest out? */
function isLeftOut(tokens: readonly Token[], last: number): boolean {
  const next = tokens[last + 1];
  if (next?.kind === 'word') return LEFT_OUT_WORD.test(next.folded);
  if (next?.kind !== 'mark' || !next.glued) return false;
  if (LEFT_OUT_MARKS.has(next.folded)) return true;
  const after = tokens[last + 2];
  if (!after?.glued) return false;
  return (
    ((next.folded === '.' || next.folded === '?') && after.folded === next.folded) ||
    (JOINTS.has(next.folded) && LEFT_OUT_WORD.test(after.folded))
  );
}

/** A letter behind the digits, glued or after a hyphen: its token; -1 for none; null where the word rules a code out. */
function letterBehind(
  tokens: readonly Token[],
  last: number,
  code: { letters: string; groups: readonly string[] },
): number | null {
  const hyphen =
    tokens[last + 1]?.folded === '-' &&
    tokens[last + 1]!.glued &&
    tokens[last + 2]?.kind === 'word' &&
    tokens[last + 2]!.glued;
  const at = hyphen ? last + 2 : last + 1;
  const word = tokens[at];
  if (word?.kind !== 'word' || !word.glued || LEFT_OUT_WORD.test(word.folded)) return -1;
  const runsOn = tokens[at + 1]?.kind === 'number' && tokens[at + 1]!.glued;
  if (word.folded.length === 1 && !runsOn) return word.folded === 's' && code.letters === '' ? null : at;
  return hyphen ? -1 : null;
}

/** Something is glued on before, so that what begins here is the rest of another word. */
function isRest(tokens: readonly Token[], at: number): boolean {
  if (!tokens[at]!.glued) return false;
  const before = tokens[at - 1]!;
  if (before.kind === 'word') return !NEVER_LETTERS.has(before.folded);
  if (before.kind === 'number') return true;
  return (
    before.glued &&
    (JOINTS.has(before.folded) || before.folded === ',') &&
    tokens[at - 2]?.kind !== 'mark' &&
    !NEVER_LETTERS.has(tokens[at - 2]?.folded ?? '')
  );
}

/**
 * The code that begins at this token, or null. `isCalled`: words before it said that a serial follows, so that a
 * single small letter apart from its digits counts too.
 */
export function codeAt(text: string, tokens: readonly Token[], at: number, isCalled: boolean): Code | null {
  const token = tokens[at];
  if (!token || isRest(tokens, at)) return null;
  const number = token.kind === 'word' ? numberAfterLetters(text, tokens, at, isCalled) : isNumber(token) ? at : -1;
  if (number < 0) return null;
  const letters = token.kind === 'word' ? token.folded : '';
  const groups = [tokens[number]!.folded];
  let last = number;
  while (groups.length < MOST_GROUPS) {
    const next = nextGroup(text, tokens, last, groups, isCalled);
    if (next < 0) break;
    groups.push(tokens[next]!.folded);
    last = next;
  }
  const behind = letterBehind(tokens, last, { letters, groups });
  if (behind === null) return null;
  if (behind >= 0) last = behind;
  return { first: at, last, letters, groups, digits: groups.join('').length, isCut: isLeftOut(tokens, last) };
}
