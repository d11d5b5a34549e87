import { hashOf } from './hash';
import { isWholeAt, roleOf, singulars } from './phrase-keys';
import type { Token } from './tokens';

export const STOP = 0;
const PASS = 1;
export const KEY = 2;

/** What a search for phrases asks of each token of a list, whatever phrases it is for. */
export interface PhraseWalk {
  /** STOP, PASS or KEY: see `roleOf`. */
  roles: Uint8Array;
  /** The places where a match may begin, in order. */
  openings: readonly number[];
  /** 1 where a match may end. */
  closes: Uint8Array;
  /** The token as it is folded, and the hash of that, with a sign: what is larger than that has to be made an object. */
  keys: readonly string[];
  hashes: Int32Array;
  /** What else the last word of a phrase may be where the text has this word, and a match may end with it: its singulars. */
  stems: readonly (readonly string[])[];
}

const NONE: readonly string[] = [];
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
  const keys = new Array<string>(length);
  const hashes = new Int32Array(length);
  const stems = new Array<readonly string[]>(length);
  for (let at = 0; at < length; at++) {
    stems[at] = NONE;
    keys[at] = tokens[at]!.folded;
    const role = roleOf(tokens, at);
    roles[at] = role === 'key' ? KEY : role === 'pass' ? PASS : STOP;
    if (role !== 'key') continue;
    const folded = keys[at]!;
    if (isWholeAt(tokens, at, -1)) openings.push(at);
    if (isWholeAt(tokens, at, 1)) closes[at] = 1;
    hashes[at] = hashOf(folded);
    if (closes[at] === 1 && tokens[at]!.kind === 'word' && mayBePlural(folded)) stems[at] = singulars(folded).slice(1);
  }
  return { roles, openings, closes, keys, hashes, stems };
}

function mayBePlural(folded: string): boolean {
  const last = folded.charCodeAt(folded.length - 1);
  return last === 0x73 || last === 0x27;
}
