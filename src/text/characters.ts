/** What a character is to the tokeniser. */
export const SPACE = 1;
export const BREAK = 2;
export const LETTER = 3;
export const DIGIT = 4;
/** "½", "²", "Ⅳ": a number by itself, which runs into no other. */
export const NUMERAL = 5;
export const APOSTROPHE = 6;
/** Takes no room and means nothing here: zero-width spaces, soft hyphens, variation selectors. */
export const IGNORABLE = 7;
/** An accent or vowel sign written as a character of its own: it belongs to what it stands on. */
export const ACCENT = 8;
export const MARK = 9;

const APOSTROPHES = "'‘’‛′ʹʻʼ´`";

function classify(character: string): number {
  if (APOSTROPHES.includes(character)) return APOSTROPHE;
  if (/^[\n\r\u0085\u2028\u2029]$/.test(character)) return BREAK;
  if (/^\p{Default_Ignorable_Code_Point}$/u.test(character)) return IGNORABLE;
  if (/^\s$/u.test(character)) return SPACE;
  if (/^\p{L}$/u.test(character)) return LETTER;
  if (/^\p{Nd}$/u.test(character)) return DIGIT;
  if (/^\p{N}$/u.test(character)) return NUMERAL;
  if (/^\p{M}$/u.test(character)) return ACCENT;
  return MARK;
}

/** One byte for each character of the basic plane, filled as they are met. */
const known = new Uint8Array(0x10000);

/** The kind of the character with this code point; lone surrogates are marks. */
export function characterKind(codePoint: number): number {
  if (codePoint > 0xffff) return classify(String.fromCodePoint(codePoint));
  const before = known[codePoint]!;
  if (before !== 0) return before;
  const kind = classify(String.fromCharCode(codePoint));
  known[codePoint] = kind;
  return kind;
}
