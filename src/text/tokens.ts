import * as character from './characters';
import { fold } from './fold';
import { remembering } from './remember';
import type { Span } from './span';

export type TokenKind = 'word' | 'number' | 'mark' | 'break';

/**
 * A token of a text. Letters and digits are separate tokens, so that "12K", "12-K" and "12 K" are the same two;
 * `glued` says that nothing stands between this token and the one before.
 */
export interface Token extends Span {
  kind: TokenKind;
  /** Lower case, without accents, "ß" as "ss", curly quotes straight. */
  folded: string;
  glued: boolean;
}

/** French words that lose their vowel before another: what follows the apostrophe is a word of its own. */
const ELIDED = new Set(['l', 'd', 'j', 'n', 's', 'c', 'm', 't', 'qu', 'jusqu', 'lorsqu', 'puisqu', 'quoiqu']);
const ELIDED_LONGEST = 7;

function widthAt(codePoint: number): number {
  return codePoint > 0xffff ? 2 : 1;
}

/** Where the word that starts at `start` ends; accents, and invisible characters between letters, are inside it. */
function endOfWord(text: string, start: number): number {
  let end = start;
  let at = start;
  while (at < text.length) {
    const code = text.codePointAt(at)!;
    const kind = character.characterKind(code);
    const next = at + widthAt(code);
    if (kind === character.LETTER || kind === character.ACCENT) end = next;
    else if (kind === character.APOSTROPHE) {
      const after = text.codePointAt(next);
      if (end !== at || after === undefined || character.characterKind(after) !== character.LETTER) break;
      if (at - start <= ELIDED_LONGEST && ELIDED.has(fold(text.slice(start, at)).text)) return next;
    } else if (kind !== character.IGNORABLE) break;
    at = next;
  }
  return end;
}

function endOfNumber(text: string, start: number): number {
  let end = start;
  let at = start;
  while (at < text.length) {
    const code = text.codePointAt(at)!;
    const kind = character.characterKind(code);
    if (kind === character.DIGIT || (kind === character.ACCENT && end === at)) end = at + widthAt(code);
    else if (kind !== character.IGNORABLE) break;
    at += widthAt(code);
  }
  return end;
}

/** One character with the accents that stand on it ("①", an emoji, a bullet). */
function endOfMark(text: string, start: number): number {
  let at = start + widthAt(text.codePointAt(start)!);
  while (at < text.length) {
    const code = text.codePointAt(at)!;
    if (character.characterKind(code) !== character.ACCENT) break;
    at += widthAt(code);
  }
  return at;
}

/** A run of line breaks is one token, from the first to the last, with the blank lines between them. */
function endOfBreak(text: string, start: number): number {
  let end = start;
  for (let at = start; at < text.length; at++) {
    const kind = character.characterKind(text.charCodeAt(at));
    if (kind === character.BREAK) end = at + 1;
    else if (kind !== character.SPACE && kind !== character.IGNORABLE) break;
  }
  return end;
}

function kindAndEnd(text: string, at: number, kind: number): [TokenKind, number] {
  if (kind === character.LETTER) return ['word', endOfWord(text, at)];
  if (kind === character.DIGIT) return ['number', endOfNumber(text, at)];
  if (kind === character.NUMERAL) return ['number', endOfMark(text, at)];
  if (kind === character.BREAK) return ['break', endOfBreak(text, at)];
  return ['mark', endOfMark(text, at)];
}

/** A backtick stands for an apostrophe, so it is folded like the curly ones. */
const ASCII = /^[!-_a-~]+$/;

function foldToken(kind: TokenKind, raw: string): string {
  if (kind === 'break') return '\n';
  if (ASCII.test(raw)) return raw.toLowerCase();
  return fold(raw).text.trim() || raw;
}

/** What most characters of most adverts are: letters, digits and marks that fold to themselves but for their case. */
const OTHER = 0;
const SMALL = 1;
const CAPITAL = 2;
const DIGIT = 3;
const MARK = 4;
const plainKinds = Uint8Array.from({ length: 0x80 }, (_, code) => {
  const written = String.fromCharCode(code);
  if (/[a-z]/.test(written)) return SMALL;
  if (/[A-Z]/.test(written)) return CAPITAL;
  if (/[0-9]/.test(written)) return DIGIT;
  return /[!-~]/.test(written) && character.characterKind(code) === character.MARK ? MARK : OTHER;
});
const plainMarks = Array.from(plainKinds, (_, code) => String.fromCharCode(code));

const plainKind = (code: number): number => (code < 0x80 ? plainKinds[code]! : OTHER);
/** What neither goes on with a word or a number nor hangs on a mark: with it, and what isn't, the plain way ends. */
const endsPlain = (code: number): boolean =>
  code === 0x20 || code === 0x0a || (code < 0x80 && plainKinds[code] !== OTHER);

/**
 * The token that begins at `at`, where it and what comes after it are plain ASCII: the quick way, by which most are
 * found. Null where it may be anything else.
 */
function plainToken(text: string, at: number, glued: boolean): Token | null {
  const first = plainKind(text.charCodeAt(at));
  if (first === OTHER) return null;
  let end = at + 1;
  if (first === MARK) {
    if (end < text.length && !endsPlain(text.charCodeAt(end))) return null;
    return { kind: 'mark', start: at, end, folded: plainMarks[text.charCodeAt(at)]!, glued };
  }
  let hasCapital = first === CAPITAL;
  for (; end < text.length; end++) {
    const next = plainKind(text.charCodeAt(end));
    if (first === DIGIT ? next !== DIGIT : next !== SMALL && next !== CAPITAL) break;
    hasCapital ||= next === CAPITAL;
  }
  if (end < text.length && !endsPlain(text.charCodeAt(end))) return null;
  const raw = text.slice(at, end);
  return {
    kind: first === DIGIT ? 'number' : 'word',
    start: at,
    end,
    folded: hasCapital ? raw.toLowerCase() : raw,
    glued,
  };
}

/**
 * The words, numbers, marks and line breaks of a text, in order; only spaces and invisible characters are in none.
 * A word keeps an inner apostrophe ("isn't"), except after a French elision ("l'" and "aiguille"); hyphens, slashes
 * and the points and commas of numbers are marks.
 */
export const tokenise = remembering((text: string): readonly Token[] => {
  const tokens: Token[] = [];
  let glued = false;
  let at = 0;
  while (at < text.length) {
    const plain = plainToken(text, at, glued);
    if (plain) {
      tokens.push(plain);
      glued = true;
      at = plain.end;
      continue;
    }
    const code = text.codePointAt(at)!;
    const sort = character.characterKind(code);
    if (sort === character.SPACE || sort === character.IGNORABLE) {
      if (sort === character.SPACE) glued = false;
      at += widthAt(code);
      continue;
    }
    const [kind, end] = kindAndEnd(text, at, sort);
    const raw = text.slice(at, end);
    tokens.push({ kind, start: at, end, folded: foldToken(kind, raw), glued: glued && kind !== 'break' });
    glued = kind !== 'break';
    at = end;
  }
  return tokens;
});
