import type { Span } from '../text/span';

/** A number as it stands in a folded text: its span there, and its groups of digits with what separates them. */
export interface Numeral extends Span {
  groups: readonly string[];
  separators: readonly string[];
}

/**
 * Digits, then groups after a point, comma or apostrophe, or groups of three after a space; or, after a sign of
 * money, decimals alone ("£.99"). Each part begins with a different character, so nothing is tried twice, and no
 * number has more groups than a reader would take in, so that reading on from the middle of one stays cheap.
 */
const NUMERAL = /\d+(?:[.,'٬٫]\d+| \d{3}(?!\d)){0,7}|(?<=\p{Sc} ?)\.\d{1,2}(?!\d)/uy;

/** All numbers of a folded text, from left to right. */
export function scanNumerals(folded: string): Numeral[] {
  const found: Numeral[] = [];
  for (let number = nextNumeral(folded, 0); number; number = nextNumeral(folded, number.end)) found.push(number);
  return found;
}

/** The first number that begins at or after `from`, or null. */
export function nextNumeral(folded: string, from: number): Numeral | null {
  for (let at = mayBegin(folded, from); at < folded.length; at = mayBegin(folded, at + 1)) {
    NUMERAL.lastIndex = at;
    const match = NUMERAL.exec(folded);
    if (match) return numeral(match[0], at);
  }
  return null;
}

/** The next digit, or the next point that a digit follows: there alone the pattern is tried. */
function mayBegin(folded: string, from: number): number {
  let at = from;
  for (; at < folded.length; at++) {
    const code = folded.charCodeAt(at);
    if (isDigit(code) || (code === 0x2e && isDigit(folded.charCodeAt(at + 1)))) break;
  }
  return at;
}

const isDigit = (code: number): boolean => code >= 0x30 && code <= 0x39;

function numeral(written: string, start: number): Numeral {
  const groups = written.split(/[.,'٬٫ ]/u);
  const separators = written.match(/[.,'٬٫ ]/gu) ?? [];
  return { start, end: start + written.length, groups, separators };
}

/** What three digits after a single point or comma are: "1.340" is one thousand and some, or one and some. */
export type ThreeDigits = (separator: string) => 'group' | 'decimals';

const ONLY_GROUPS = new Set([' ', "'", '٬']);
const MAY_BE_DECIMAL = new Set(['.', ',', '٫']);

/** "1,340,500" in threes, or "12,50,000" as in India: twos and a last group of three. */
function areGrouped(groups: readonly string[]): boolean {
  const first = groups[0]!;
  const last = groups.at(-1)!;
  if (groups.length < 2 || first.length > 3 || first.startsWith('0') || last.length !== 3) return false;
  const middle = groups.slice(1, -1);
  return (
    middle.every((group) => group.length === 3) || (first.length <= 2 && middle.every((group) => group.length === 2))
  );
}

function decimal(whole: string, decimals: string): string {
  const plain = whole.replace(/^0+(?=\d)/, '') || '0';
  return decimals ? `${plain}.${decimals}` : plain;
}

/** The number as a decimal string where all its groups make sense together, else null. */
function valueOfGroups(groups: readonly string[], separators: readonly string[], three: ThreeDigits): string | null {
  const last = separators.at(-1);
  if (last === undefined) return decimal(groups[0]!, '');
  const tail = groups.at(-1)!;
  const kinds = new Set(separators);
  if (kinds.size === 1 && separators.length > 1) {
    if (areGrouped(groups)) return decimal(groups.join(''), '');
    // "1.340.00": the same mark for both.
    const head = groups.slice(0, -1);
    return tail.length === 2 && MAY_BE_DECIMAL.has(last) && areGrouped(head) ? decimal(head.join(''), tail) : null;
  }
  if (kinds.size === 1) {
    const grouped = areGrouped(groups);
    if (ONLY_GROUPS.has(last)) return grouped ? decimal(groups.join(''), '') : null;
    if (last !== '٫' && grouped && three(last) === 'group') return decimal(groups.join(''), '');
    return decimal(groups[0]!, tail);
  }
  const head = groups.slice(0, -1);
  const one = kinds.size === 2 && !separators.slice(0, -1).includes(last) && MAY_BE_DECIMAL.has(last);
  return one && areGrouped(head) ? decimal(head.join(''), tail) : null;
}

/**
 * The value of a numeral as a decimal string, decimals as written, and where it ends: a group that makes no sense
 * with those before it ("5,10,15") is left out.
 */
export function readNumeral(number: Numeral, three: ThreeDigits): { value: string; end: number } {
  let count = number.groups.length;
  let { end } = number;
  for (; count > 1; count--) {
    const value = valueOfGroups(number.groups.slice(0, count), number.separators.slice(0, count - 1), three);
    // "5,10,15" is a list: where the same mark goes on, it was no decimal mark.
    const goesOn = number.separators[count - 1] === number.separators[count - 2];
    if (value !== null && !(goesOn && value.includes('.'))) return { value, end };
    end -= number.groups[count - 1]!.length + 1;
  }
  return { value: decimal(number.groups[0]!, ''), end: number.start + number.groups[0]!.length };
}

const COMMA_LANGUAGES = new Set(
  'de fr es it nl pt pl cs sk sl hr sr bg ro hu ru uk sv da nb nn no fi is et lv lt el tr id vi ca eu gl'.split(' '),
);

/** The decimal mark that a language's readers expect, or null where the language is not known. */
export function decimalMark(language: string | null | undefined): '.' | ',' | null {
  if (!language) return null;
  const tag = language.toLowerCase();
  // Central America, Mexico and Switzerland write a point where their languages elsewhere write a comma.
  if (/^(?:de|fr|it)-(?:ch|li)$|^es-(?:mx|pr|do|gt|hn|ni|pa|sv|us|419)$/.test(tag)) return '.';
  return COMMA_LANGUAGES.has(tag.split('-')[0]!) ? ',' : '.';
}
