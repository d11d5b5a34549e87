import { fitted } from '../text/fitted';
import type { Folded } from '../text/fold';
import type { Span } from '../text/span';
import { matchAt } from './match-at';
import { type Meaning, mayComeFirst, meaningOfSign, meaningOfWord, namedDollar } from './money-signs';

/** What is expected of the page. */
export interface Expectation {
  expected: string | null;
  language: string | null;
  isPriceField: boolean;
}

/** A sign, word or code of a currency beside a number, in the folded text. */
export interface Beside extends Span {
  meaning: Meaning;
  /** A code or word, not a sign such as "£". */
  isWord: boolean;
}

/** The text being read, in its two forms. */
export interface Reading extends Expectation {
  text: string;
  folded: Folded;
}

const written = ({ text, folded }: Reading, start: number, end: number) => {
  const span = folded.toOriginal(start, end);
  return text.slice(span.start, span.end);
};

const SIGN_BEFORE = fitted('u')`(\p{L}{0,4})( ?)(\p{Sc})[:]? {0,3}$`;
const WORD_BEFORE = fitted('u')`(?<![\p{L}\p{N}'])(\p{L}{1,8})(?:\/(?= ))?[.:]{0,2} {0,3}$`;

/** More than either of them takes. */
const FARTHEST = 16;
const MOST_SPACES = 3;
const MOST_MARKS = 2;

/**
 * Can what stands before the number that starts at `at` end in a sign or a word? Before most numbers of most adverts
 * stands no sign, and that is told by a few characters. "sign" is for all that may be one, or a letter of other scripts.
 */
function lastBefore(folded: string, at: number): 'letter' | 'sign' | null {
  let last = at - 1;
  while (last >= 0 && at - 1 - last < MOST_SPACES && folded.charCodeAt(last) === 0x20) last--;
  for (let marks = 0; marks < MOST_MARKS && isPointOrColon(folded.charCodeAt(last)); marks++) last--;
  const code = folded.charCodeAt(last);
  if ((code >= 0x61 && code <= 0x7a) || code === 0x2f) return 'letter';
  return !(code < 0x80) || code === 0x24 ? 'sign' : null;
}

const isPointOrColon = (code: number): boolean => code === 0x2e || code === 0x3a;

/** The sign, word or code right before the number that starts at `at`. */
export function signBefore(reading: Reading, at: number): Beside | null {
  const last = lastBefore(reading.folded.text, at);
  if (!last) return null;
  const from = Math.max(0, at - FARTHEST);
  const left = reading.folded.text.slice(from, at);
  const sign = last === 'sign' ? SIGN_BEFORE.exec(left) : null;
  if (sign) {
    const [, letters, space, symbol] = sign as unknown as [string, string, string, string];
    const symbolAt = from + sign.index + letters.length + space.length;
    const lettersAt = from + sign.index;
    // "US $450" but not "a $450 machine".
    const named = letters && (!space || /^\p{Lu}{2,4}$/u.test(written(reading, lettersAt, lettersAt + letters.length)));
    const meaning = named ? meaningOfSign(letters + symbol, reading.expected) : null;
    if (meaning) return { meaning, isWord: false, start: lettersAt, end: at };
    const plain = meaningOfSign(symbol, reading.expected);
    return plain && { meaning: plain, isWord: false, start: symbolAt, end: at };
  }
  const word = WORD_BEFORE.exec(left);
  if (!word || !mayComeFirst(word[1]!)) return null;
  const start = from + word.index;
  const letters = word[1]!;
  const meaning = meaningOfWord(
    letters,
    written(reading, start, start + letters.length),
    reading.isPriceField,
    reading.expected,
  );
  return meaning && { meaning, isWord: true, start, end: at };
}

const SIGN = fitted('u')`\p{Sc}`;
/** Characters in which a sign behind a number ends. */
const SIGN_WITHIN = 8;
const SIGN_AFTER = fitted('uy')` {0,3}(\p{L}{0,3})(\p{Sc})(\p{L}{1,2}(?!\p{L})| \p{L}{2}(?![\p{L}\p{N}]))?`;
const WORD_AFTER = fitted('uy')` {0,3}(?:(\p{L}{2,10}) (dollars?)|(\p{L}{1,10}))(?![\p{L}\p{N}])`;
const WORD_THEN_DIGIT = fitted('uy')` {0,3}(\p{L}{1,10})(?=\d)`;

/** A digit comes next after the sign that ends at `end`: the sign may be that number's. */
export function digitFollows(folded: string, end: number): 'glued' | 'spaced' | null {
  const match = /^( ?)\d/.exec(folded.slice(end, end + 2));
  return match && (match[1] ? 'spaced' : 'glued');
}

/** "450€", "450 CA$", "5,00 $US", "45 $ US". */
function signOnlyAfter(reading: Reading, at: number, match: RegExpExecArray): Beside | null {
  const [whole, letters, symbol, behind = ''] = match as unknown as [string, string, string, string?];
  const folded = reading.folded.text;
  const signEnd = at + whole.length - behind.length;
  const isName =
    behind !== '' && (!behind.startsWith(' ') || /^ \p{Lu}+$/u.test(written(reading, signEnd, at + whole.length)));
  const named = isName ? meaningOfSign(symbol + behind.trim(), reading.expected) : null;
  const end = named ? at + whole.length : signEnd;
  const next = digitFollows(folded, end);
  const isOurs = next === null || (next === 'spaced' && (!whole.startsWith(' ') || symbol === '€'));
  const meaning = isOurs ? (named ?? meaningOfSign(letters + symbol, reading.expected)) : null;
  return meaning && { meaning, isWord: false, start: at, end };
}

/** The sign, word or code right after the number that ends at `at`, where it is not the next number's. */
export function signAfter(reading: Reading, at: number): Beside | null {
  const folded = reading.folded.text;
  // Mostly there is none, and browsers take long to get the longer pattern ready.
  const sign = SIGN.test(folded.slice(at, at + SIGN_WITHIN)) ? matchAt(SIGN_AFTER, folded, at) : null;
  if (sign) return signOnlyAfter(reading, at, sign);
  const word = matchAt(WORD_AFTER, folded, at);
  if (!word || matchAt(WORD_THEN_DIGIT, folded, at)) return null;
  const [whole, adjective, dollars, plain] = word;
  const end = at + whole.length;
  if (adjective && dollars) {
    const currency = namedDollar(adjective);
    if (currency) return { meaning: { currency, shared: [] }, isWord: true, start: at, end };
  }
  const letters = plain ?? adjective!;
  const start = at + whole.length - whole.trimStart().length;
  const wordEnd = start + letters.length;
  const meaning = meaningOfWord(letters, written(reading, start, wordEnd), reading.isPriceField, reading.expected);
  return meaning && { meaning, isWord: true, start: at, end: wordEnd };
}
