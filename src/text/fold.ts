import { FoldedPlaces } from './folded-places';
import { remembering } from './remember';
import type { Span } from './span';

/** A text made comparable, with the way back to where its parts stand in the original. */
export interface Folded {
  text: string;
  /**
   * The stretch of the original that `text.slice(start, end)` came from, in UTF-16 units, end exclusive.
   * What was folded as one ("½", "ß", a letter with its accents) is always taken whole.
   */
  toOriginal(start: number, end: number): Span;
}

/** Letters that Unicode does not decompose, though readers take them for the plain ones. */
const PLAIN = new Map(
  Object.entries({
    ß: 'ss',
    ẞ: 'ss',
    æ: 'ae',
    Æ: 'ae',
    œ: 'oe',
    Œ: 'oe',
    ø: 'o',
    Ø: 'o',
    ł: 'l',
    Ł: 'l',
    đ: 'd',
    Đ: 'd',
    ð: 'd',
    Ð: 'd',
    þ: 'th',
    Þ: 'th',
    ı: 'i',
    ς: 'σ',
    '⁄': '/',
    '‘': "'",
    '’': "'",
    '‚': "'",
    '‛': "'",
    '′': "'",
    '‵': "'",
    ʹ: "'",
    ʻ: "'",
    ʼ: "'",
    '´': "'",
    '`': "'",
    '‹': "'",
    '›': "'",
    '“': '"',
    '”': '"',
    '„': '"',
    '‟': '"',
    '″': '"',
    '‶': '"',
    '«': '"',
    '»': '"',
    '〝': '"',
    '〞': '"',
    '−': '-',
    '\t': ' ',
    '\v': ' ',
    '\f': ' ',
    '\u0085': '\n',
    '\u2028': '\n',
    '\u2029': '\n',
  }),
);

const IGNORABLE = /^\p{Default_Ignorable_Code_Point}$/u;
const DASH = /^\p{Pd}$/u;
const SPACE = /^\p{Zs}$/u;
/** Accents of every script's letters, but not the marks that make another sound of a kana or carry an Indic vowel. */
const ACCENTS = /(?![\u3099\u309a])(?=\p{M})\p{Script=Inherited}/gu;
const DECIMAL_DIGIT = /^\p{Nd}$/u;

const remembered = new Map<string, string>();
/** More different characters than any text that is not meant to fill memory. */
const REMEMBERED_MOST = 4096;

function foldOnce(character: string): string {
  const plain = PLAIN.get(character);
  if (plain !== undefined) return plain;
  if (IGNORABLE.test(character)) return '';
  if (DASH.test(character)) return '-';
  if (SPACE.test(character)) return ' ';
  const plainest = character.normalize('NFKD').replace(ACCENTS, '').toLowerCase();
  return DECIMAL_DIGIT.test(plainest) ? asciiDigit(plainest) : plainest;
}

/** The decimal digits of each script stand in a row, from its zero on. */
function asciiDigit(digit: string): string {
  const code = digit.codePointAt(0)!;
  let value = 0;
  while (value < 9 && DECIMAL_DIGIT.test(String.fromCodePoint(code - value - 1))) value++;
  return String(value);
}

function foldCharacter(character: string): string {
  const known = remembered.get(character);
  if (known !== undefined) return known;
  let folded = foldOnce(character);
  // What a character decomposes into may itself have a plain form: "¾" gives a fraction slash, "ǿ" gives "ø".
  for (let round = 0; round < 4; round++) {
    const again = Array.from(folded, foldOnce).join('');
    if (again === folded) break;
    folded = again;
  }
  if (remembered.size < REMEMBERED_MOST) remembered.set(character, folded);
  return folded;
}

const ASCII = /^[\u0000-\u007f]*$/;
const ASCII_CHANGED = /[\t\v\f`]/;

function foldAscii(text: string): string {
  const lower = text.toLowerCase();
  return ASCII_CHANGED.test(lower) ? lower.replace(/[\t\v\f]/g, ' ').replaceAll('`', "'") : lower;
}

/**
 * Lower case, without accents, "ß" as "ss"; quotes, dashes and spaces of every kind as the ASCII ones, compatibility
 * forms (full width, ligatures) as what they stand for; digits of every script as 0 to 9; invisible characters
 * dropped. Line breaks stay.
 */
export const fold = remembering((text: string): Folded => {
  if (text.length > SHORT) return folded(text);
  let short = shorts.get(text);
  if (short === undefined) {
    short = folded(text);
    if (shorts.size >= REMEMBERED_MOST) shorts.clear();
    shorts.set(text, short);
  }
  return short;
});

/** A page has the same labels and names all over, and many readers fold each of them. */
const SHORT = 63;
const shorts = new Map<string, Folded>();

function folded(text: string): Folded {
  if (ASCII.test(text))
    return { text: foldAscii(text), toOriginal: (start, end) => ({ start, end: Math.max(start, end) }) };
  // Where its parts stand is asked of few texts.
  let places: FoldedPlaces | null = null;
  return {
    text: foldAll(text, null),
    toOriginal: (start, end) => {
      if (places === null) {
        places = new FoldedPlaces();
        foldAll(text, places);
      }
      return places.toOriginal(start, end, text.length);
    },
  };
}

function foldAll(text: string, places: FoldedPlaces | null): string {
  let made = '';
  let afterDigit = false;
  for (let at = 0; at < text.length; ) {
    const plainEnd = endOfAscii(text, at);
    if (plainEnd > at) {
      places?.addRun(at, plainEnd - at);
      made += foldAscii(text.slice(at, plainEnd));
      afterDigit = isAsciiDigit(text.charCodeAt(plainEnd - 1));
      at = plainEnd;
      continue;
    }
    const character = String.fromCodePoint(text.codePointAt(at)!);
    const end = at + character.length;
    let piece = foldCharacter(character);
    // "10½" is ten and a half: the half must not run into the ten.
    if (afterDigit && isAsciiDigit(piece.charCodeAt(0)) && !DECIMAL_DIGIT.test(character)) piece = ` ${piece}`;
    if (piece) afterDigit = isAsciiDigit(piece.charCodeAt(piece.length - 1));
    if (piece) places?.addWhole(at, end, piece.length);
    // An accent belongs to the letter before it.
    else if (places && !IGNORABLE.test(character)) places.lengthenLast(end);
    made += piece;
    at = end;
  }
  return made;
}

function endOfAscii(text: string, from: number): number {
  let at = from;
  while (at < text.length && text.charCodeAt(at) < 0x80) at++;
  return at;
}

const isAsciiDigit = (code: number): boolean => code >= 0x30 && code <= 0x39;
