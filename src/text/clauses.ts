import { cutAfter, cutBefore } from './boundaries';
import type { Span } from './span';
import type { Token } from './tokens';

/** A stretch of a text that is read as one statement. */
export interface Clause extends Span {
  /** Counts from 0; clauses of one sentence share it. */
  sentence: number;
  /** All tokens of the clause in order, with the marks that open or end it; never a break. */
  tokens: readonly Token[];
}

/** Marks that, glued on, belong to what they close, even where a mark before them ended it already: `iron!"`. */
const CLOSERS = new Set(['.', '!', '?', ';', ':', ',', ')', ']', '}', '"', "'", '...']);

/**
 * The clauses of a text. A sentence ends at . ! ? ; (not inside numbers and abbreviations), at line breaks, bullets
 * and emoji; a clause ends at commas, spaced dashes, colons before words, brackets, and before words of contrast in
 * English, German and French. Every word and number of `tokens` (from `tokenise(text)`) is in exactly one clause.
 */
export function clauses(text: string, tokens: readonly Token[]): readonly Clause[] {
  const there = known.get(tokens);
  if (there) return there;
  const made = cut(text, tokens);
  known.set(tokens, made);
  return made;
}

/** Several readers ask for the clauses of one text. */
const known = new WeakMap<readonly Token[], readonly Clause[]>();

function cut(text: string, tokens: readonly Token[]): Clause[] {
  const found: (Clause & { tokens: Token[] })[] = [];
  let current: Token[] = [];
  let hasWords = false;
  let sentence = 0;
  let sentenceIsEmpty = true;

  const close = (endsSentence: boolean) => {
    if (hasWords) {
      found.push({ sentence, tokens: current, start: current[0]!.start, end: current.at(-1)!.end });
      current = [];
      hasWords = false;
      sentenceIsEmpty = false;
    }
    if (endsSentence && !sentenceIsEmpty) {
      sentence++;
      sentenceIsEmpty = true;
    }
  };

  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at]!;
    if (token.kind === 'break') {
      close(true);
      current = [];
      continue;
    }
    const before = cutBefore(text, tokens, at);
    if (before !== 'none') close(before === 'sentence');
    const last = found.at(-1);
    if (current.length === 0 && last?.end === token.start && token.kind === 'mark' && CLOSERS.has(token.folded)) {
      last.tokens.push(token);
      last.end = token.end;
    } else {
      current.push(token);
      hasWords ||= token.kind !== 'mark';
    }
    const after = cutAfter(text, tokens, at, sentenceIsEmpty && current.length <= 2);
    if (after !== 'none') close(after === 'sentence');
  }
  close(true);
  return found;
}
