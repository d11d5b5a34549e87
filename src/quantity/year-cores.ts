import type { Span } from '../text/span';
import { matchAt } from './match-at';

/** What a year, decade or century is by itself, before the words beside it: in a folded text, both ends included. */
export interface YearCore extends Span {
  from: number;
  to: number;
  /** "1954" as against "1950s": only a plain year can be a price, a model or a serial. */
  isPlain: boolean;
  /** Without a century ("50s", "fifties"): could be somebody's age. */
  isShort: boolean;
  approximate: boolean;
}

export const EARLIEST = 1500;
export const LATEST = 2100;

const core = (start: number, end: number, from: number, to: number, isPlain = false, isShort = false): YearCore => {
  return { start, end, from, to, isPlain, isShort, approximate: false };
};

const decade = (start: number, end: number, from: number, isShort: boolean): YearCore =>
  core(start, end, from, from + 9, false, isShort);

const FOUR_DIGITS =
  /(?<!\d)(annees )?(1[5-9]\d\d|20\d\d|2100)(?!\d)(?:( ?'?s|ies|er[ -]?jahren?|er| er jahren?)(?!\p{L}))?/uy;
const ANNEES = 'annees ';

/** The matches of four digits, each looked for only where digits begin or "années" before them. */
function fourDigits(folded: string): RegExpExecArray[] {
  const found: RegExpExecArray[] = [];
  let free = 0;
  for (
    let at = nextDigit(folded, 0);
    at < folded.length;
    at = nextDigit(folded, Math.max(endOfDigits(folded, at), free))
  ) {
    const annees = at - ANNEES.length;
    const match =
      (annees >= free && folded.startsWith(ANNEES, annees) ? matchAt(FOUR_DIGITS, folded, annees) : null) ??
      matchAt(FOUR_DIGITS, folded, at);
    if (!match) continue;
    free = match.index + match[0].length;
    found.push(match);
  }
  return found;
}

const isDigit = (code: number): boolean => code >= 0x30 && code <= 0x39;

function nextDigit(folded: string, from: number): number {
  let at = from;
  while (at < folded.length && !isDigit(folded.charCodeAt(at))) at++;
  return at;
}

function endOfDigits(folded: string, from: number): number {
  let at = from;
  while (isDigit(folded.charCodeAt(at))) at++;
  return at;
}

function addFourDigits(folded: string, to: YearCore[]): void {
  for (const match of fourDigits(folded)) {
    const [whole, annees, digits, suffix] = match as unknown as [string, string?, string?, string?];
    const year = Number(digits);
    const start = match.index;
    const end = start + whole.length;
    const isDecade = year % 10 === 0 && (suffix !== undefined || annees !== undefined);
    if (!isDecade) {
      // "the 1954's" and "1954 s" are not a way to write years; "1954er" is.
      const plainEnd = suffix?.startsWith('er') ? end : end - (suffix?.length ?? 0);
      const plainStart = start + (annees?.length ?? 0);
      to.push(core(plainStart, plainEnd, year, year, true));
    } else if (year % 100 === 0 && year < 2000 && !annees) {
      // Of "1900s" nobody knows whether the decade or the century is meant: take the wider.
      to.push(core(start, end, year, year + 99));
    } else to.push(decade(start, end, year, false));
  }
}

const TWO_DIGITS =
  /(?<![\p{L}\p{N}]|\d[.,:/-]|\p{Sc} ?)(?:([2-9]0) ?[-/] ?)?'?([2-9]0)(?:'?s(?![\p{L}'])|ies(?!\p{L})|er[ -]?jahren?(?!\p{L})|er(?= ?[-/] ?[2-9]0er))/gu;
const ARTICLE_BEFORE_TWO_DIGITS =
  /(?<=(?:der|den|die|aus|fruhe|fruhen|spate|spaten|mitte|ende|anfang) )([2-9]0)ern?(?![\p{L}-])(?! nadeln?)/gu;
const FRENCH_TWO_DIGITS = /(?<!\p{L})annees ([2-9]0)(?!\d)/gu;

const WORDS = new Map<string, number>([
  ...'twenties thirties forties fifties sixties seventies eighties nineties'
    .split(' ')
    .map((word, at): [string, number] => [word, 1920 + at * 10]),
  ...'zwanziger dreissiger vierziger funfziger sechziger siebziger achtziger neunziger'
    .split(' ')
    .flatMap((word, at) => [word, `${word}n`].map((one): [string, number] => [one, 1920 + at * 10])),
  ['fuenfziger', 1950],
  ...'annees vingt,annees trente,annees quarante,annees cinquante,annees soixante,annees soixante-dix,annees quatre-vingt,annees quatre-vingt-dix'
    .split(',')
    .map((word, at): [string, number] => [word, 1920 + at * 10]),
]);
const WORD = new RegExp(
  `(?<!\\p{L})(?:nineteen[ -])?(${[...WORDS.keys()].sort((a, b) => b.length - a.length).join('|')})(?:[ -]?jahren?)?(?!\\p{L})`,
  'gu',
);

/** "50s", or "50-60er Jahre", which is two of them. */
function shortDecade(match: RegExpExecArray): YearCore {
  const last = 1900 + Number(match[2] ?? match[1]);
  const first = match[2] && match[1] ? 1900 + Number(match[1]) : last;
  return core(match.index, match.index + match[0].length, Math.min(first, last), last + 9, false, true);
}

/**
 * The matches of a pattern in a text that has one of the pieces which each of them holds: most adverts have none, and to
 * look for a piece takes next to no time.
 */
function matchesOf(pattern: RegExp, folded: string, pieces: readonly string[]): Iterable<RegExpExecArray> {
  return pieces.some((piece) => folded.includes(piece)) ? folded.matchAll(pattern) : NO_MATCHES;
}

const NO_MATCHES: readonly RegExpExecArray[] = [];

/** What any of them holds: one look for all of it, for the many texts that have none. */
const SHORT_FORM = /0'?s|0ies|0er|annees |ties|[sz]iger/;

function addShortForms(folded: string, to: YearCore[]): void {
  if (!SHORT_FORM.test(folded)) return;
  for (const match of matchesOf(TWO_DIGITS, folded, ['0s', "0's", '0ies', '0er'])) to.push(shortDecade(match));
  for (const match of matchesOf(ARTICLE_BEFORE_TWO_DIGITS, folded, ['0er'])) to.push(shortDecade(match));
  for (const match of matchesOf(FRENCH_TWO_DIGITS, folded, [ANNEES])) to.push(shortDecade(match));
  for (const match of matchesOf(WORD, folded, ['ties', 'ziger', 'siger', ANNEES]))
    to.push(
      decade(match.index, match.index + match[0].length, WORDS.get(match[1]!)!, !match[0].startsWith('nineteen')),
    );
}

const CENTURY =
  /(?<![\p{L}\p{N}])(?:(1[6-9]|2[01])(?:th|st|nd|rd)? ?[-.]? ?(?:century|c\.|jahrhunderts?|jhs?|jhd|jahrh)|(xvi|xvii|xviii|xix|xx|xxi) ?e? siecle)(?![\p{L}])/gu;
const ROMAN = new Map([
  ['xvi', 16],
  ['xvii', 17],
  ['xviii', 18],
  ['xix', 19],
  ['xx', 20],
  ['xxi', 21],
]);
const TURN = /(?<!\p{L})(?:turn of the (?:last )?century|jahrhundertwende|tournant du siecle)(?!\p{L})/gu;

const CENTURY_FORM = /century|c\.|jh|jahrh|siecle|turn of the|tournant/;

function addCenturies(folded: string, to: YearCore[]): void {
  if (!CENTURY_FORM.test(folded)) return;
  for (const match of matchesOf(CENTURY, folded, ['century', 'c.', 'jh', 'jahrh', 'siecle'])) {
    const number = match[1] ? Number(match[1]) : ROMAN.get(match[2]!)!;
    const from = (number - 1) * 100;
    to.push(core(match.index, match.index + match[0].length, from, Math.min(from + 99, LATEST)));
  }
  for (const match of matchesOf(TURN, folded, ['turn of the', 'jahrhundertwende', 'tournant'])) {
    to.push({ ...core(match.index, match.index + match[0].length, 1890, 1910), approximate: true });
  }
}

/** All years, decades and centuries of a folded text, in order; the longest where they overlap. */
export function yearCores(folded: string): YearCore[] {
  const all: YearCore[] = [];
  addFourDigits(folded, all);
  addShortForms(folded, all);
  addCenturies(folded, all);
  all.sort((a, b) => a.start - b.start || b.end - a.end);
  const kept: YearCore[] = [];
  for (const one of all) if (one.start >= (kept.at(-1)?.end ?? 0)) kept.push(one);
  return kept;
}
