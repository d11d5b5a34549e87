import { hashOf } from './hash';
import { type PhraseFinder, PhraseIndex, type PhraseMatch, type PhraseTree, searchTrees } from './phrases';
import { Sieve, sieveBits } from './sieve';
import type { Token } from './tokens';

type Numbers = Uint8Array | Uint16Array | Uint32Array;

/**
 * A tree of phrases as numbers, which can be kept as bytes and searched as it lies there. Nodes are numbered in breadth,
 * so that a node's children stand in a row, in the order of the hashes of their keys.
 */
export interface PackedTree {
  /** Where each node's children begin; the last one is their end. The child at place i is node i + 1. */
  children: Numbers;
  /** For each node the place of the key that leads to it; 0 for the root, which none leads to. */
  keys: Numbers;
  /** For each key its hash, and where its letters begin; the last one is their end. */
  hashes: Uint32Array;
  lettersFrom: Numbers;
  /** The letters of all keys, as UTF-16 units. */
  letters: Numbers;
  /** Where each node's values begin in `values`; the last one is their end. */
  valuesFrom: Numbers;
  values: Numbers;
  /** A sieve of what phrases begin with: few words of a text are among that. */
  openings: Uint32Array;
}

/** So few children are looked through by halves at once. */
const FEW = 8;
const NONE: readonly never[] = [];

/** Whole numbers below 2^32 in as few bytes as the largest of them needs. */
function narrow(numbers: readonly number[]): Numbers {
  const most = numbers.reduce((a, b) => Math.max(a, b), 0);
  return most < 2 ** 8
    ? Uint8Array.from(numbers)
    : most < 2 ** 16
      ? Uint16Array.from(numbers)
      : Uint32Array.from(numbers);
}

/** Lays phrases into a packed tree, each with a number that it stands for. Phrases without a word are left out. */
export function packPhrases(phrases: Iterable<readonly [phrase: string, value: number]>): PackedTree {
  const index = new PhraseIndex<number>();
  for (const [phrase, value] of phrases) index.add(phrase, value);
  const places = new Map<string, number>();
  const order = [0];
  const keys = [0];
  const children: number[] = [];
  const valuesFrom: number[] = [];
  const values: number[] = [];
  for (let at = 0; at < order.length; at++) {
    const node = order[at]!;
    children.push(order.length - 1);
    valuesFrom.push(values.length);
    for (const value of index.values(node)) values.push(value);
    const sorted = [...index.keys(node)].map((key) => ({ key, hash: hashOf(key) }));
    sorted.sort((a, b) => a.hash - b.hash || (a.key < b.key ? -1 : 1));
    for (const { key } of sorted) {
      order.push(index.next(node, key));
      const place = places.get(key) ?? places.size;
      places.set(key, place);
      keys.push(place);
    }
  }
  children.push(order.length - 1);
  valuesFrom.push(values.length);
  return {
    ...{ children: narrow(children), keys: narrow(keys), ...lettersOf([...places.keys()]) },
    ...{ valuesFrom: narrow(valuesFrom), values: narrow(values) },
    openings: sieveBits([...index.keys(0)].map(hashOf)),
  };
}

function lettersOf(keys: readonly string[]): Pick<PackedTree, 'hashes' | 'lettersFrom' | 'letters'> {
  const letters: number[] = [];
  const lettersFrom = [0];
  for (const key of keys) {
    for (let i = 0; i < key.length; i++) letters.push(key.charCodeAt(i));
    lettersFrom.push(letters.length);
  }
  return { hashes: Uint32Array.from(keys, hashOf), lettersFrom: narrow(lettersFrom), letters: narrow(letters) };
}

/**
 * A packed tree with what its numbers stand for.
 *
 * Problem: an index of 15,000 phrases takes longer to build than a whole audit. Method: it lies there as columns of
 * numbers and nothing is built at all; a step looks for the hash of the key among the node's children, and compares the
 * key's letters where the hash is found.
 */
export class PackedPhrases<T> implements PhraseTree<T>, PhraseFinder<T> {
  readonly #tree: PackedTree;
  readonly #stands: (value: number) => T;
  readonly #known = new Map<number, readonly T[]>();
  readonly #openings: Sieve;

  /** @param stands what a number means; asked once for each phrase that is found */
  constructor(tree: PackedTree, stands: (value: number) => T) {
    this.#tree = tree;
    this.#stands = stands;
    this.#openings = new Sieve(tree.openings);
  }

  next(node: number, key: string, hash = hashOf(key)): number {
    if (node === 0 && !this.#openings.may(hash)) return -1;
    const { children, keys, hashes } = this.#tree;
    const end = children[node + 1]!;
    let child = this.#firstNotBefore(hash, children[node]!, end);
    for (; child < end && hashes[keys[child + 1]!]! === hash >>> 0; child++)
      if (this.#isKey(keys[child + 1]!, key)) return child + 1;
    return -1;
  }

  /**
   * The first child, from `from` to before `to`, whose key's hash isn't smaller. Hashes lie as if thrown, so that the
   * place of one is nearly its share of all that there are: from there in growing steps until it is passed, then by
   * halves. However many children there are, few are looked at; where a pack has its keys chosen so that the guess is
   * wrong, no more than twice as many as by halves alone.
   */
  #firstNotBefore(signed: number, from: number, to: number): number {
    const hash = signed >>> 0;
    const { keys, hashes } = this.#tree;
    let low = from;
    let high = to;
    if (to - from > FEW) {
      const guess = from + Math.floor((hash / 2 ** 32) * (to - from));
      let step = FEW;
      if (hashes[keys[guess + 1]!]! < hash) {
        low = guess + 1;
        for (; low + step < to && hashes[keys[low + step + 1]!]! < hash; step *= 2) low += step + 1;
        high = Math.min(to, low + step);
      } else {
        high = guess;
        for (; high - step > from && hashes[keys[high - step + 1]!]! >= hash; step *= 2) high -= step;
        low = Math.max(from, high - step);
      }
    }
    while (low < high) {
      const middle = (low + high) >>> 1;
      if (hashes[keys[middle + 1]!]! < hash) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  #isKey(place: number, key: string): boolean {
    const { lettersFrom, letters } = this.#tree;
    const from = lettersFrom[place]!;
    if (lettersFrom[place + 1]! - from !== key.length) return false;
    for (let i = 0; i < key.length; i++) if (letters[from + i] !== key.charCodeAt(i)) return false;
    return true;
  }

  values(node: number): readonly T[] {
    const { valuesFrom, values } = this.#tree;
    const from = valuesFrom[node]!;
    const to = valuesFrom[node + 1]!;
    if (from === to) return NONE;
    const there = this.#known.get(node);
    if (there) return there;
    const made = Array.from(values.subarray(from, to), (value) => this.#stands(value));
    this.#known.set(node, made);
    return made;
  }

  search(tokens: readonly Token[]): PhraseMatch<T>[] {
    return searchTrees([this], tokens);
  }
}

/** Several trees asked as one. Remembers what it found in a list of tokens: several readers ask it the same. */
export class JoinedPhrases<T> implements PhraseFinder<T> {
  readonly #trees: readonly PhraseTree<T>[];
  readonly #found = new WeakMap<readonly Token[], readonly PhraseMatch<T>[]>();

  constructor(trees: readonly PhraseTree<T>[]) {
    this.#trees = trees;
  }

  search(tokens: readonly Token[]): readonly PhraseMatch<T>[] {
    const there = this.#found.get(tokens);
    if (there) return there;
    const found = searchTrees(this.#trees, tokens);
    this.#found.set(tokens, found);
    return found;
  }
}
