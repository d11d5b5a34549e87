import { isAbbreviated } from './abbreviations';
import type { Token } from './tokens';

/** How much ends at a place in a text. */
export type Cut = 'none' | 'clause' | 'sentence';

const BULLETS = new Set('•●○▪■□◦‣⁃►▶▸✓✔✅✗✘☑★☆|¦');
/** Bullets only with a space before them: glued on they are footnotes, products and points. */
const LOOSE_BULLETS = new Set('*·∙');
const EMOJI = /^\p{Extended_Pictographic}/u;
const SIGNS = new Set('©®™℠');
const MONEY_SIGN = /^\p{Sc}$/u;
const CAPITAL = /^\p{Lu}/u;

const CONTRASTS = new Set(
  (
    'but although though however whereas while except aber sondern jedoch obwohl wahrend allerdings doch mais cependant ' +
    'toutefois sauf quoique'
  ).split(' '),
);
/** "bien que", "alors que": the second word decides. */
const BEFORE_QUE = new Set(['bien', 'alors', 'tandis']);
const MAY_CUT = new Set([...CONTRASTS, ...BEFORE_QUE]);
/** "nothing but iron", "for a while": no contrast after these. */
const NOT_AFTER = new Map([
  ['but', new Set(['nothing', 'anything', 'all', 'none', 'no', 'everything', 'last'])],
  ['while', new Set(['a', 'the', 'that', 'this'])],
]);
const MONTHS = new Set(
  (
    'januar februar marz april mai juni juli august september oktober november dezember janner ' +
    'january february march may june july october december'
  ).split(' '),
);

const isGluedNumber = (token: Token | undefined) => token?.kind === 'number' && token.glued;
const isDot = (token: Token | undefined) => token?.kind === 'mark' && token.folded === '.';

/** A mark inside a number: "1,340", "11.5", "10:30", "3/4". */
function isInsideNumber(tokens: readonly Token[], at: number): boolean {
  return tokens[at]!.glued && tokens[at - 1]?.kind === 'number' && isGluedNumber(tokens[at + 1]);
}

/** A number, or a few letters with a number glued on ("K20417") or, in capitals, beside it ("K 20417"). */
function isCode(text: string, tokens: readonly Token[], at: number): boolean {
  const token = tokens[at];
  if (token?.kind === 'number') return true;
  if (token?.kind !== 'word' || token.folded.length > 3 || tokens[at + 1]?.kind !== 'number') return false;
  return tokens[at + 1]!.glued || /^(?![AI]$)\p{Lu}+$/u.test(text.slice(token.start, token.end));
}

/** "No. 5", "no. K 20417", but not "drop feed no. 6.5 kg": a number with a unit is a measure. */
function isNumbered(text: string, tokens: readonly Token[], at: number): boolean {
  return isCode(text, tokens, at) && !isMeasure(text, tokens[at]!.start);
}

/** A number with a unit stands there: "6.5 kg". */
export const isMeasure = (text: string, at: number): boolean => MEASURE.test(text.slice(at, at + LONGEST_MEASURE));

const MEASURE = /^\d+(?:[.,]\d+)? ?(?:kg|kgs|kilos?|lbs?|cm|mm|inch|inches|watts?|volts?)(?!\w)/i;
const LONGEST_MEASURE = 16;

/** "z.B.", "o.n.o.": single letters with full stops between them. */
function isDotted(tokens: readonly Token[], at: number): boolean {
  const before = tokens[at - 1]!;
  if (before.kind !== 'word' || before.folded.length > 2) return false;
  const after = tokens[at + 1];
  if (before.folded.length === 1 && after?.kind === 'word' && after.glued) return true;
  return before.glued && isDot(tokens[at - 2]) && tokens[at - 3]?.kind === 'word' && tokens[at - 3]!.folded.length <= 2;
}

function fullStop(text: string, tokens: readonly Token[], at: number, startsSentence: boolean): Cut {
  const dot = tokens[at]!;
  const before = tokens[at - 1];
  const after = tokens[at + 1];
  if (!before || !dot.glued || before.kind === 'break') return 'none';
  if (isInsideNumber(tokens, at)) return 'none';
  if (isDot(after) && after!.glued) return 'sentence';
  if (before.kind === 'number') {
    const numbersAList = startsSentence && after !== undefined && after.kind !== 'break';
    return numbersAList || (after?.kind === 'word' && (after.glued || MONTHS.has(after.folded))) ? 'none' : 'sentence';
  }
  if (before.kind !== 'word') return 'sentence';
  const beforeCapital = after?.kind === 'word' && CAPITAL.test(text.slice(after.start, after.end));
  if (isDotted(tokens, at)) return before.folded === 'o' && beforeCapital ? 'sentence' : 'none';
  const afterNumber = tokens[at - 2]?.kind === 'number';
  if (
    isAbbreviated({ word: before.folded, afterNumber, beforeNumber: isNumbered(text, tokens, at + 1), beforeCapital })
  )
    return 'none';
  // "bedplate.example" is an address; "sews well.Collect only" lacks a space.
  return after?.kind === 'word' && after.glued && !beforeCapital ? 'none' : 'sentence';
}

/** A range of numbers or prices: "11 - 12", "£5 – £10". */
function isBetweenNumbers(tokens: readonly Token[], at: number): boolean {
  const after = tokens[at + 1];
  const next = after?.kind === 'mark' && MONEY_SIGN.test(after.folded) ? tokens[at + 2] : after;
  return tokens[at - 1]?.kind === 'number' && next?.kind === 'number';
}

function dash(text: string, tokens: readonly Token[], at: number): Cut {
  const token = tokens[at]!;
  const after = tokens[at + 1];
  if (isBetweenNumbers(tokens, at)) return 'none';
  const spaced = !token.glued && !after?.glued;
  const long = text[token.start] === '—' || (token.glued && tokens[at - 1]?.folded === '-');
  return spaced || long ? 'clause' : 'none';
}

/** What ends with the mark at `at`, which itself belongs to what it ends. */
export function cutAfter(text: string, tokens: readonly Token[], at: number, startsSentence: boolean): Cut {
  const token = tokens[at]!;
  if (token.kind === 'break') return 'sentence';
  if (token.kind !== 'mark') return 'none';
  const after = tokens[at + 1];
  switch (token.folded) {
    case '.':
      return fullStop(text, tokens, at, startsSentence);
    case '!':
    case '?':
    case ';':
    case '...':
    case '。':
      return 'sentence';
    case ',':
      return isInsideNumber(tokens, at) ? 'none' : 'clause';
    case ':':
      return after?.kind === 'word' && !isCode(text, tokens, at + 1) ? 'clause' : 'none';
    case '-':
      return dash(text, tokens, at);
    case '/':
      return !token.glued && !after?.glued && !isBetweenNumbers(tokens, at) ? 'clause' : 'none';
    case ')':
      return startsSentence && numbersAnItem(tokens, at) ? 'none' : 'clause';
    case ']':
    case '}':
      return 'clause';
    default:
      return 'none';
  }
}

/** "2) the treadle, b) its lid": the sign of an item belongs to the item. */
function numbersAnItem(tokens: readonly Token[], bracket: number): boolean {
  const sign = tokens[bracket - 1];
  const isSign = sign?.kind === 'number' ? sign.folded.length <= 2 : sign?.kind === 'word' && sign.folded.length === 1;
  const after = tokens[bracket + 1];
  return isSign && tokens[bracket]!.glued && after !== undefined && after.kind !== 'break';
}

/** What ends before the token at `at`: a bullet, an opening bracket, a word of contrast. */
export function cutBefore(text: string, tokens: readonly Token[], at: number): Cut {
  const token = tokens[at]!;
  const before = tokens[at - 1];
  if (token.kind === 'word') {
    if (!MAY_CUT.has(token.folded)) return 'none';
    if (CONTRASTS.has(token.folded)) return NOT_AFTER.get(token.folded)?.has(before?.folded ?? '') ? 'none' : 'clause';
    const next = tokens[at + 1]?.folded;
    // "Aussi bien que" compares.
    return before?.folded !== 'aussi' && (next === 'que' || next === "qu'") ? 'clause' : 'none';
  }
  if (token.kind !== 'mark') return 'none';
  if (token.folded === '(' || token.folded === '[' || token.folded === '{') return 'clause';
  const code = text.codePointAt(token.start)!;
  const written = String.fromCodePoint(code);
  if (BULLETS.has(written) || (LOOSE_BULLETS.has(written) && !token.glued)) return 'sentence';
  return code > 0x7f && EMOJI.test(written) && !SIGNS.has(written) ? 'sentence' : 'none';
}
