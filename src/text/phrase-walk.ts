import { hashOf } from './hash';
import { isWholeAt, roleOf, singulars } from './phrase-keys';
import type { Token } from './tokens';

const STOP = 0;
export const PASS = 1;
export const KEY = 2;

/** What a search for phrases asks of each token of a list, whatever phrases it is for. */
export interface PhraseWalk {
  /** STOP, PASS or KEY: see `roleOf`. */
  roles: Uint8Array;
  /** The places where a match may begin, in order. */
  openings: readonly number[];
  /** NO where a match can't end, AS_WRITTEN where it may, AS_SINGULAR where its last word may be a singular of this too. */
  closes: Uint8Array;
  /** Token -> the place of its key among the keys: a text has its words over and over. */
  words: Uint32Array;
  /** The different keys of the text, as they are folded, and the hash of each, with a sign: without it is an object. */
  keys: readonly string[];
  hashes: Int32Array;
  /** For each key its singulars: what the last word of a phrase may be where the text has this word. */
  stems: readonly (readonly Stem[])[];
}

export interface Stem {
  key: string;
  hash: number;
}

export const NO = 0;
const AS_WRITTEN = 1;
export const AS_SINGULAR = 2;

const NONE: readonly Stem[] = [];
const walks = new WeakMap<readonly Token[], PhraseWalk>();

/** Worked out once for a list of tokens, which many indices are asked about. Nobody changes such a list. */
export function walkOf(tokens: readonly Token[]): PhraseWalk {
  const there = walks.get(tokens);
  if (there) return there;
  const made = walkThrough(tokens);
  walks.set(tokens, made);
  return made;
}

function walkThrough(tokens: readonly Token[]): PhraseWalk {
  const { length } = tokens;
  const roles = new Uint8Array(length);
  const openings: number[] = [];
  const closes = new Uint8Array(length);
  const words = new Uint32Array(length);
  const places = new Map<string, number>();
  const keys: string[] = [];
  const stems: (readonly Stem[])[] = [];
  for (let at = 0; at < length; at++) {
    const role = roleOf(tokens, at);
    roles[at] = role === 'key' ? KEY : role === 'pass' ? PASS : STOP;
    if (role !== 'key') continue;
    const { kind, folded } = tokens[at]!;
    let word = places.get(folded);
    if (word === undefined) {
      word = keys.push(folded) - 1;
      stems.push(mayBePlural(folded) ? stemsOf(folded) : NONE);
      places.set(folded, word);
    }
    words[at] = word;
    if (isWholeAt(tokens, at, -1)) openings.push(at);
    if (isWholeAt(tokens, at, 1)) closes[at] = kind === 'word' && stems[word]!.length > 0 ? AS_SINGULAR : AS_WRITTEN;
  }
  return { roles, openings, closes, words, keys, hashes: Int32Array.from(keys, hashOf), stems };
}

function stemsOf(folded: string): Stem[] {
  return singulars(folded)
    .slice(1)
    .map((key) => ({ key, hash: hashOf(key) | 0 }));
}

function mayBePlural(folded: string): boolean {
  const last = folded.charCodeAt(folded.length - 1);
  return last === 0x73 || last === 0x27;
}
