import { isAbbreviation } from './abbreviations';
import type { Span } from './span';
import { type Token, tokenise } from './tokens';

/** Where a phrase stands: the tokens from `firstToken` to `lastToken`, both included, of those that were searched. */
export interface PhraseMatch<T> extends Span {
  firstToken: number;
  lastToken: number;
  value: T;
}

/** What a token is to a phrase: a key to match, a mark to pass over, or a place no phrase goes across. */
export type Role = 'key' | 'pass' | 'stop';

const PASSED = new Set(['-', '/', "'", '®', 'tm']);
const STOPS = new Set([',', ';', ':', '!', '?', '...', '(', ')', '[', ']', '{', '}', '"']);
const JOINS_NUMBERS = new Set(['.', ',', '/']);

/** The role of the token at `at`; exported for the tests, which hold the index to a naive search. */
export function roleOf(tokens: readonly Token[], at: number): Role {
  const token = tokens[at]!;
  if (token.kind === 'break') return 'stop';
  if (token.kind !== 'mark') return 'key';
  const before = tokens[at - 1];
  const after = tokens[at + 1];
  const glued = token.glued && before !== undefined;
  const betweenNumbers = glued && before.kind === 'number' && after?.kind === 'number' && after.glued;
  if (betweenNumbers && JOINS_NUMBERS.has(token.folded)) return 'key';
  if (PASSED.has(token.folded)) return glued ? 'pass' : 'stop';
  if (token.folded === '.') {
    const short = glued && before.kind === 'word' && (before.folded.length === 1 || isAbbreviation(before.folded));
    return short ? 'pass' : 'stop';
  }
  return STOPS.has(token.folded) ? 'stop' : 'key';
}

/**
 * May a match begin (step -1) or end (step 1) at this token? "15" is not in "1.15", "3/15" or "15K", nor "K" in
 * "K20", which are other numbers and other names; but "15s" is more than one "15".
 */
export function isWholeAt(tokens: readonly Token[], at: number, step: -1 | 1): boolean {
  const token = tokens[at]!;
  const beside = tokens[at + step];
  if (!beside || !(step === 1 ? beside : token).glued) return true;
  if (token.kind === 'number') {
    if (beside.kind === 'mark') return !(JOINS_NUMBERS.has(beside.folded) && roleOf(tokens, at + step) === 'key');
    return beside.kind === 'number' || (step === 1 && beside.folded === 's');
  }
  return !(token.kind === 'word' && token.folded.length <= 2 && beside.kind === 'number');
}

const SHORTEST_PLURAL_STEM = 4;

/** What the last word of a phrase may be where the text has this word: itself, or the singular of it. */
export function singulars(folded: string): string[] {
  const stems: string[] = [folded];
  for (const ending of ['s', 'es', "'s", "s'"]) {
    if (folded.endsWith(ending) && folded.length - ending.length >= SHORTEST_PLURAL_STEM)
      stems.push(folded.slice(0, -ending.length));
  }
  return stems;
}

interface Node<T> {
  next: Map<string, Node<T>>;
  values: T[];
}

/** In keys: bounds the walk from each place in a text, whatever a pack holds. */
const LONGEST_PHRASE = 40;
const FRACTION = /^\d+\/\d+$/;

/** "3/4 size" is written "¾ size" too, where the fraction is one token: both ways are laid into the tree. */
function otherFractions(keys: readonly string[]): string[] {
  const split = keys.flatMap((key) => (FRACTION.test(key) ? [key.split('/')[0]!, '/', key.split('/')[1]!] : [key]));
  if (split.length > keys.length) return split;
  const joined: string[] = [];
  for (const key of keys) {
    const top = joined.at(-2);
    if (joined.at(-1) === '/' && top && FRACTION.test(`${top}/${key}`)) joined.splice(-2, 2, `${top}/${key}`);
    else joined.push(key);
  }
  return joined;
}

/**
 * The ways to write a phrase, each as its keys: words and numbers, and the marks that matter. None for a phrase of
 * mere punctuation, nor for one that is longer than any wording is.
 */
export function waysToWrite(phrase: string): string[][] {
  const tokens = tokenise(phrase);
  if (!tokens.some((token) => token.kind === 'word' || token.kind === 'number')) return [];
  const keys = tokens.filter((_, at) => roleOf(tokens, at) === 'key').map((token) => token.folded);
  if (keys.length === 0 || keys.length > LONGEST_PHRASE) return [];
  const other = otherFractions(keys);
  return other.length === keys.length ? [keys] : [keys, other];
}

/**
 * Finds many phrases in a text at once.
 *
 * Problem: thousands of phrases, and a text must not be searched once for each. Method: phrases are cut into tokens
 * and laid into a tree that branches by token, so that from each place in the text one walk follows all phrases that
 * begin there. Example: "cast iron" and "cast iron base" share the branches cast, iron; at "Cast-Iron base" one walk
 * of three steps finds both. The cost per token depends on the longest phrase that fits there, not on their number.
 *
 * Hyphens, slashes and apostrophes between words, and the full stops of abbreviations, are passed over where they are
 * glued on. A match never crosses a line break, a sentence mark or a comma. The last word also matches its plain
 * English plural or possessive from four letters on. Numbers match exactly and whole.
 */
export class PhraseIndex<T> {
  readonly #root: Node<T> = { next: new Map(), values: [] };

  /** Adds a phrase. False, and not added, where it has no word and no number, or is longer than any wording is. */
  add(phrase: string, value: T): boolean {
    const ways = waysToWrite(phrase);
    for (const keys of ways) this.#lay(keys, value);
    return ways.length > 0;
  }

  #lay(keys: readonly string[], value: T): void {
    let node = this.#root;
    for (const key of keys) {
      let next = node.next.get(key);
      if (!next) {
        next = { next: new Map(), values: [] };
        node.next.set(key, next);
      }
      node = next;
    }
    node.values.push(value);
  }

  /** All matches, overlapping ones too: by where they begin, the longest first. */
  search(tokens: readonly Token[]): PhraseMatch<T>[] {
    const found: PhraseMatch<T>[] = [];
    for (let first = 0; first < tokens.length; first++) {
      if (roleOf(tokens, first) !== 'key' || !isWholeAt(tokens, first, -1)) continue;
      const here = this.#matchesFrom(tokens, first);
      for (let i = here.length - 1; i >= 0; i--) found.push(here[i]!);
    }
    return found;
  }

  #matchesFrom(tokens: readonly Token[], first: number): PhraseMatch<T>[] {
    const found: PhraseMatch<T>[] = [];
    let node: Node<T> | undefined = this.#root;
    for (let at = first; at < tokens.length && node; at++) {
      const role = roleOf(tokens, at);
      if (role === 'stop') break;
      if (role === 'pass') continue;
      const { kind, folded, end } = tokens[at]!;
      if (isWholeAt(tokens, at, 1)) {
        for (const last of kind === 'word' ? singulars(folded) : [folded]) {
          for (const value of node.next.get(last)?.values ?? [])
            found.push({ start: tokens[first]!.start, end, firstToken: first, lastToken: at, value });
        }
      }
      node = node.next.get(folded);
    }
    return found;
  }
}
