import { hashOf } from './hash';
import { waysToWrite } from './phrase-keys';
import { KEY, type PhraseWalk, STOP, walkOf } from './phrase-walk';
import { Sieve } from './sieve';
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
  const found: PhraseMatch<T>[] = [];
  const nodes = trees.map(() => 0);
  const before = nodes.slice();
  for (const first of walk.openings) {
    if (!beginsAt(trees, walk, first)) continue;
    nodes.fill(0);
    addFrom(trees, tokens, walk, first, nodes, before, found);
  }
  return found;
}

/** Does some phrase begin with the token there? With most tokens none does, so that nothing is made to find out. */
function beginsAt<T>(trees: readonly PhraseTree<T>[], { keys, hashes, stems }: PhraseWalk, at: number): boolean {
  for (let i = 0; i < trees.length; i++) if (trees[i]!.next(0, keys[at]!, hashes[at]) >= 0) return true;
  const own = stems[at]!;
  for (let j = 0; j < own.length; j++)
    for (let i = 0; i < trees.length; i++) if (trees[i]!.next(0, own[j]!) >= 0) return true;
  return false;
}

/**
 * Adds the matches that begin at a token, the longest first.
 * @param nodes the trees' roots, which it goes on from; `before` are those that it stood at one key earlier
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
  let isOpen = true;
  for (let at = first; isOpen && at < tokens.length; at++) {
    const role = walk.roles[at]!;
    if (role === STOP) break;
    if (role !== KEY) continue;
    const stems = walk.stems[at]!;
    isOpen = step(trees, nodes, before, walk.keys[at]!, walk.hashes[at]!, stems);
    if (walk.closes[at] === 0) continue;
    if (isOpen) for (let i = 0; i < trees.length; i++) addValues(trees[i]!, nodes[i]!, tokens, first, at, found);
    for (let j = 0; j < stems.length; j++)
      for (let i = 0; i < trees.length; i++)
        if (before[i]! >= 0) addValues(trees[i]!, trees[i]!.next(before[i]!, stems[j]!), tokens, first, at, found);
  }
  if (found.length > shorter + 1) turn(found, shorter);
}

/** Goes on by one key in each tree; false where no phrase of any goes on so. */
function step<T>(
  trees: readonly PhraseTree<T>[],
  nodes: number[],
  before: number[],
  key: string,
  hash: number,
  stems: readonly string[],
): boolean {
  let isOpen = false;
  for (let i = 0; i < trees.length; i++) {
    const node = nodes[i]!;
    if (stems.length > 0) before[i] = node;
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
  for (const value of values) found.push({ start, end, firstToken, lastToken, value });
}

/** Turns the order of a list round, from a place on. */
function turn<T>(list: T[], from: number): void {
  for (let low = from, high = list.length - 1; low < high; low++, high--) {
    const one = list[low]!;
    list[low] = list[high]!;
    list[high] = one;
  }
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
      this.#openings ??= new Sieve([...this.keys(0)].map(hashOf));
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
