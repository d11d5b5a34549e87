import { hashOf } from './hash';
import { waysToWrite } from './phrase-keys';
import { AS_SINGULAR, KEY, NO, PASS, type PhraseWalk, walkOf } from './phrase-walk';
import { Sieve, sieveBits } from './sieve';
import type { Span } from './span';
import type { Token } from './tokens';

/** Where a phrase stands: the tokens from `firstToken` to `lastToken`, both included, of those that were searched. */
export interface PhraseMatch<T> extends Span {
  firstToken: number;
  lastToken: number;
  value: T;
}

/** Phrases in a tree that branches by key: node 0 is the root. */
export interface PhraseTree<T> {
  /**
   * The node that is one key further, or -1 where no phrase goes on so.
   * @param hash the key's, from `hashOf`, with a sign or without, where it is known already
   */
  next(node: number, key: string, hash?: number): number;
  /** What the phrases that end here stand for, in the order in which they were added. */
  values(node: number): readonly T[];
}

/** Whatever finds phrases in a text. */
export interface PhraseFinder<T> {
  /** All matches, overlapping ones too: by where they begin, the longest first. */
  search(tokens: readonly Token[]): readonly PhraseMatch<T>[];
}

/**
 * Searches several trees as if their phrases stood in one, those of the first tree added first.
 * @returns all matches, overlapping ones too: by where they begin, the longest first
 */
export function searchTrees<T>(trees: readonly PhraseTree<T>[], tokens: readonly Token[]): PhraseMatch<T>[] {
  const walk = walkOf(tokens);
  const { openings, words } = walk;
  const roots = trees.map((tree) => rootsOf(tree, walk));
  const begins = walk.keys.map((_, word) => isBeginning(trees, roots, walk, word));
  const found: PhraseMatch<T>[] = [];
  const nodes = trees.map(() => 0);
  const before = nodes.slice();
  for (let i = 0; i < openings.length; i++) {
    const first = openings[i]!;
    const word = words[first]!;
    if (!begins[word]) continue;
    for (let tree = 0; tree < trees.length; tree++) {
      nodes[tree] = roots[tree]![word]!;
      before[tree] = 0;
    }
    addFrom(trees, tokens, walk, first, nodes, before, found);
  }
  return found;
}

/** For each key of a text the node that it leads to from the tree's root, or -1: asked once, however often it stands there. */
function rootsOf<T>(tree: PhraseTree<T>, { keys, hashes }: PhraseWalk): number[] {
  return keys.map((key, word) => tree.next(0, key, hashes[word]));
}

/** Does some phrase begin with a key, or is one word of which the text has the plural? */
function isBeginning<T>(
  trees: readonly PhraseTree<T>[],
  roots: readonly (readonly number[])[],
  { stems }: PhraseWalk,
  word: number,
): boolean {
  for (let i = 0; i < trees.length; i++) {
    if (roots[i]![word]! >= 0) return true;
    for (const { key, hash } of stems[word]!) if (trees[i]!.next(0, key, hash) >= 0) return true;
  }
  return false;
}

/** The next token that is a key, past those that are passed over, or -1 where no phrase goes on. */
function nextKey(roles: Uint8Array, from: number): number {
  let at = from + 1;
  while (roles[at] === PASS) at++;
  // Behind the last token there is no role at all.
  return roles[at] === KEY ? at : -1;
}

/**
 * Adds the matches that begin at a token, the longest first.
 * @param nodes where the token's key leads to in each tree, from where it goes on; `before` are those that it stood at one
 *   key earlier
 */
function addFrom<T>(
  trees: readonly PhraseTree<T>[],
  tokens: readonly Token[],
  walk: PhraseWalk,
  first: number,
  nodes: number[],
  before: number[],
  found: PhraseMatch<T>[],
): void {
  const shorter = found.length;
  const { roles, closes, words } = walk;
  for (let at = first, isOpen = true; ; ) {
    const ends = closes[at]!;
    if (ends !== NO) for (let i = 0; i < trees.length; i++) addValues(trees[i]!, nodes[i]!, tokens, first, at, found);
    if (ends === AS_SINGULAR)
      for (const { key, hash } of walk.stems[words[at]!]!)
        for (let i = 0; i < trees.length; i++)
          if (before[i]! >= 0) addValues(trees[i]!, trees[i]!.next(before[i]!, key, hash), tokens, first, at, found);
    at = isOpen ? nextKey(roles, at) : -1;
    if (at < 0) break;
    isOpen = step(trees, nodes, before, walk.keys[words[at]!]!, walk.hashes[words[at]!]!);
  }
  if (found.length > shorter + 1) found.push(...found.splice(shorter).reverse());
}

/** Goes on by one key in each tree; false where no phrase of any goes on so. */
function step<T>(
  trees: readonly PhraseTree<T>[],
  nodes: number[],
  before: number[],
  key: string,
  hash: number,
): boolean {
  let isOpen = false;
  for (let i = 0; i < trees.length; i++) {
    const node = nodes[i]!;
    before[i] = node;
    if (node < 0) continue;
    const next = trees[i]!.next(node, key, hash);
    nodes[i] = next;
    if (next >= 0) isOpen = true;
  }
  return isOpen;
}

function addValues<T>(
  tree: PhraseTree<T>,
  node: number,
  tokens: readonly Token[],
  firstToken: number,
  lastToken: number,
  found: PhraseMatch<T>[],
): void {
  if (node < 0) return;
  const values = tree.values(node);
  if (values.length === 0) return;
  const { start } = tokens[firstToken]!;
  const { end } = tokens[lastToken]!;
  for (let i = 0; i < values.length; i++) found.push({ start, end, firstToken, lastToken, value: values[i]! });
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
export class PhraseIndex<T> implements PhraseTree<T>, PhraseFinder<T> {
  /** Null where no phrase goes on, as at most nodes: a map for each would be most of what an index holds. */
  readonly #next: (Map<string, number> | null)[] = [null];
  readonly #values: T[][] = [[]];
  /** What phrases begin with; null until it is asked. */
  #openings: Sieve | null = null;

  /** Adds a phrase. False, and not added, where it has no word and no number, or is longer than any wording is. */
  add(phrase: string, value: T): boolean {
    const ways = waysToWrite(phrase);
    for (const keys of ways) this.#lay(keys, value);
    return ways.length > 0;
  }

  #lay(keys: readonly string[], value: T): void {
    let node = 0;
    this.#openings = null;
    for (const key of keys) {
      let next = this.next(node, key);
      if (next < 0) {
        next = this.#next.push(null) - 1;
        this.#values.push([]);
        const there = this.#next[node];
        if (there) there.set(key, next);
        else this.#next[node] = new Map([[key, next]]);
      }
      node = next;
    }
    this.#values[node]!.push(value);
  }

  next(node: number, key: string, hash?: number): number {
    if (node === 0 && hash !== undefined) {
      this.#openings ??= new Sieve(sieveBits([...this.keys(0)].map(hashOf)));
      if (!this.#openings.may(hash)) return -1;
    }
    return this.#next[node]?.get(key) ?? -1;
  }

  values(node: number): readonly T[] {
    return this.#values[node]!;
  }

  /** The keys that lead on from a node, in the order in which they were added. */
  keys(node: number): Iterable<string> {
    return this.#next[node]?.keys() ?? [];
  }

  search(tokens: readonly Token[]): PhraseMatch<T>[] {
    return searchTrees([this], tokens);
  }
}
