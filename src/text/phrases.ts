import { isWholeAt, roleOf, singulars, waysToWrite } from './phrase-keys';
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
  /** The node that is one key further, or -1 where no phrase goes on so. */
  next(node: number, key: string): number;
  /** What the phrases that end here stand for, in the order in which they were added. */
  values(node: number): readonly T[];
}

/** Whatever finds phrases in a text. */
export interface PhraseFinder<T> {
  /** All matches, overlapping ones too: by where they begin, the longest first. */
  search(tokens: readonly Token[]): PhraseMatch<T>[];
}

/**
 * Searches several trees as if their phrases stood in one, those of the first tree added first.
 * @returns all matches, overlapping ones too: by where they begin, the longest first
 */
export function searchTrees<T>(trees: readonly PhraseTree<T>[], tokens: readonly Token[]): PhraseMatch<T>[] {
  const found: PhraseMatch<T>[] = [];
  for (let first = 0; first < tokens.length; first++) {
    if (roleOf(tokens, first) !== 'key' || !isWholeAt(tokens, first, -1)) continue;
    const here = matchesFrom(trees, tokens, first);
    for (let i = here.length - 1; i >= 0; i--) found.push(here[i]!);
  }
  return found;
}

function matchesFrom<T>(trees: readonly PhraseTree<T>[], tokens: readonly Token[], first: number): PhraseMatch<T>[] {
  const found: PhraseMatch<T>[] = [];
  const nodes = trees.map(() => 0);
  let open = trees.length;
  for (let at = first; at < tokens.length && open > 0; at++) {
    const role = roleOf(tokens, at);
    if (role === 'stop') break;
    if (role === 'pass') continue;
    const { kind, folded, end } = tokens[at]!;
    if (isWholeAt(tokens, at, 1))
      for (const last of kind === 'word' ? singulars(folded) : [folded])
        for (let i = 0; i < trees.length; i++)
          for (const value of valuesAt(trees[i]!, nodes[i]!, last))
            found.push({ start: tokens[first]!.start, end, firstToken: first, lastToken: at, value });
    open = 0;
    for (let i = 0; i < trees.length; i++) {
      nodes[i] = nodes[i]! < 0 ? -1 : trees[i]!.next(nodes[i]!, folded);
      if (nodes[i]! >= 0) open++;
    }
  }
  return found;
}

function valuesAt<T>(tree: PhraseTree<T>, node: number, key: string): readonly T[] {
  const end = node < 0 ? -1 : tree.next(node, key);
  return end < 0 ? [] : tree.values(end);
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
  readonly #next: Map<string, number>[] = [new Map()];
  readonly #values: T[][] = [[]];

  /** Adds a phrase. False, and not added, where it has no word and no number, or is longer than any wording is. */
  add(phrase: string, value: T): boolean {
    const ways = waysToWrite(phrase);
    for (const keys of ways) this.#lay(keys, value);
    return ways.length > 0;
  }

  #lay(keys: readonly string[], value: T): void {
    let node = 0;
    for (const key of keys) {
      let next = this.next(node, key);
      if (next < 0) {
        next = this.#next.push(new Map()) - 1;
        this.#values.push([]);
        this.#next[node]!.set(key, next);
      }
      node = next;
    }
    this.#values[node]!.push(value);
  }

  next(node: number, key: string): number {
    return this.#next[node]!.get(key) ?? -1;
  }

  values(node: number): readonly T[] {
    return this.#values[node]!;
  }

  /** The keys that lead on from a node, in the order in which they were added. */
  keys(node: number): Iterable<string> {
    return this.#next[node]!.keys();
  }

  search(tokens: readonly Token[]): PhraseMatch<T>[] {
    return searchTrees([this], tokens);
  }
}
