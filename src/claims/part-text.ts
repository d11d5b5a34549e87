import type { Listing } from '../listing/types';
import { type Clause, clauses } from '../text/clauses';
import { firstNotBefore } from '../text/in-order';
import { type Token, tokenise } from '../text/tokens';
import { unwrapped } from '../text/wrapped-lines';
import { statementsIn } from './statements';
import type { Quote, TextField } from './types';

/** One field of an advert, cut into tokens and clauses once for all that read it. */
export interface TextPart {
  field: TextField;
  text: string;
  tokens: readonly Token[];
  clauses: ClauseRange[];
  /** Token -> the place of its clause in that list, or -1 for a mark between clauses. */
  clauseOf: Int32Array;
}

/** A clause with the places of its tokens in the part's list: from `first` to `last`, both included. */
export interface ClauseRange extends Clause {
  first: number;
  last: number;
}

const FIELDS = ['title', 'description', 'details', 'condition'] as const;

export function textParts(listing: Listing): TextPart[] {
  return FIELDS.filter((field) => listing[field]).map((field) => textPart(field, listing[field]!));
}

export function textPart(field: TextField, text: string): TextPart {
  const tokens = unwrapped(text, tokenise(text));
  let at = 0;
  const ranges = statementsIn(clauses(text, tokens)).map(({ sentence, tokens: own, start, end }) => {
    while (tokens[at] !== own[0]) at++;
    const first = at;
    at += own.length;
    return { sentence, tokens: own, start, end, first, last: first + own.length - 1 };
  });
  const clauseOf = new Int32Array(tokens.length).fill(-1);
  ranges.forEach(({ first, last }, place) => {
    for (let token = first; token <= last; token++) clauseOf[token] = place;
  });
  return { field, text, tokens, clauses: ranges, clauseOf };
}

/**
 * Tokens on either side of a place that can have to do with it. A clause of hundreds of words is no clause, and to read
 * all of it for each of its words would take for ever.
 */
export const FARTHEST = 120;

/** The place of the first token of these that is no mark, or -1. */
export function firstWordOf(tokens: readonly Token[]): number {
  return tokens.findIndex(({ kind }) => kind !== 'mark');
}

/** The clause in which a token stands, or null for a mark between clauses. */
export function clauseAt(part: TextPart, token: number): ClauseRange | null {
  return part.clauses[part.clauseOf[token] ?? -1] ?? null;
}

/** The place of that clause in the part's list, or -1. */
export function clauseIndexAt(part: TextPart, token: number): number {
  return part.clauseOf[token] ?? -1;
}

/** The place of the clause by which the sentence of the one at `at` opens, going back over at most so many. */
export function openingAt({ clauses }: TextPart, at: number, most: number): number {
  const sentence = clauses[at]?.sentence;
  let opening = at;
  while (clauses[opening - 1]?.sentence === sentence && at - opening < most) opening--;
  return opening;
}

export function quoteOf(part: TextPart, start: number, end: number): Quote {
  return { field: part.field, quote: part.text.slice(start, end), start, end };
}

/** A token as it is written. */
export function writtenAt(part: TextPart, token: number): string {
  const { start, end } = part.tokens[token]!;
  return part.text.slice(start, end);
}

/** The token in which a place of the text lies, or the next one. */
export function tokenAt(part: TextPart, offset: number): number {
  return firstNotBefore(part.tokens, ({ end }) => end <= offset);
}

/**
 * A word that a capital shows to be a name, or a code of up to three letters. A word in capitals throughout
 * ("SCISSORS") shows nothing: whole adverts are written so.
 */
export function hasNameCapital(part: TextPart, token: number): boolean {
  const { start, end } = part.tokens[token]!;
  const word = part.text.slice(start, end);
  return /^\p{Lu}/u.test(word) && !/^\p{Lu}{4,}$/u.test(word);
}
