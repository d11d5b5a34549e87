import Fuse from 'fuse.js/basic';
import type { Knowledge, NameKnown } from '../pack/knowledge';
import { fold } from '../text/fold';
import type { PhraseMatch } from '../text/phrases';
import { editDistance } from './edit-distance';
import type { TextPart } from './part-text';

interface Spelling {
  folded: string;
  known: NameKnown;
}

const SHORTEST = 5;
const MOST_TITLE_WORDS = 60;
/** A name and its misspelling keep their first letter and differ by two letters at most: only such names are searched. */
const MOST_LETTERS_OFF = 2;
const searchers = new WeakMap<Knowledge, Map<string, Fuse<Spelling>>>();

function searchersOf(knowledge: Knowledge): Map<string, Fuse<Spelling>> {
  const there = searchers.get(knowledge);
  if (there) return there;
  const buckets = new Map<string, Spelling[]>();
  for (const known of knowledge.nameList) {
    const folded = fold(known.text).text;
    if (folded.length < SHORTEST || !/^\p{L}+$/u.test(folded)) continue;
    const key = folded[0]! + folded.length;
    const bucket = buckets.get(key);
    if (bucket) bucket.push({ folded, known });
    else buckets.set(key, [{ folded, known }]);
  }
  const made = new Map(
    [...buckets].map(([key, spellings]) => [key, new Fuse(spellings, { keys: ['folded'], threshold: 0.4 })]),
  );
  searchers.set(knowledge, made);
  return made;
}

/** Names that may be meant by a misspelt word, the nearest first. */
function spellingsLike(written: string, knowledge: Knowledge): Spelling[] {
  const buckets = searchersOf(knowledge);
  const found: Spelling[] = [];
  for (let off = -MOST_LETTERS_OFF; off <= MOST_LETTERS_OFF; off++)
    for (const { item } of buckets.get(written[0]! + (written.length + off))?.search(written, { limit: 8 }) ?? [])
      found.push(item);
  return found;
}

/**
 * Misspelt names, read only where a name can stand: a word of the title, or a capitalised word right before the
 * thing's noun. Never a word that some pack knows as a word of its own, never short ones, first letter kept, one letter
 * wrong in five to seven, two in longer ones.
 */
export function misspeltNames(
  part: TextPart,
  knowledge: Knowledge,
  exact: readonly PhraseMatch<NameKnown>[],
  things: readonly { firstToken: number; lastToken: number }[],
): (PhraseMatch<NameKnown> & { misspelt: true })[] {
  if (part.field !== 'title' && part.field !== 'description') return [];
  const out: (PhraseMatch<NameKnown> & { misspelt: true })[] = [];
  const known = new Set<number>();
  for (const { firstToken, lastToken } of exact) for (let i = firstToken; i <= lastToken; i++) known.add(i);
  for (const i of part.field === 'title' ? part.tokens.slice(0, MOST_TITLE_WORDS).keys() : rightBefore(things)) {
    const token = part.tokens[i]!;
    if (token.kind !== 'word' || token.folded.length < SHORTEST) continue;
    if (part.field === 'description' && !isCapitalised(part, i)) continue;
    if (known.has(i)) continue;
    if (knowledge.phrases.search(part.tokens).some(({ firstToken, lastToken }) => firstToken === i && lastToken === i))
      continue;
    for (const item of spellingsLike(token.folded, knowledge)) {
      if (!isNear(token.folded, item.folded)) continue;
      out.push({ start: token.start, end: token.end, firstToken: i, lastToken: i, value: item.known, misspelt: true });
      // "Nmae Mk II": the longer name that it begins, or ends.
      const mended = part.tokens.with(i, { ...token, folded: item.folded });
      for (const match of knowledge.names.search(mended))
        if (match.firstToken <= i && match.lastToken >= i && match.lastToken > match.firstToken)
          out.push({ ...match, misspelt: true });
    }
  }
  return out;
}

function isNear(written: string, name: string): boolean {
  if (written[0] !== name[0] || written === `${name}s` || written === `${name}es`) return false;
  const most = Math.min(written.length, name.length) >= 8 ? 2 : 1;
  const distance = editDistance(written, name, most);
  return distance > 0 && distance <= most;
}

/** The two tokens before each word for the thing, in order. */
function rightBefore(things: readonly { firstToken: number }[]): number[] {
  const places = new Set<number>();
  for (const { firstToken } of things) for (const i of [firstToken - 2, firstToken - 1]) if (i >= 0) places.add(i);
  return [...places].sort((a, b) => a - b);
}

function isCapitalised(part: TextPart, i: number): boolean {
  const token = part.tokens[i]!;
  return /^\p{Lu}/u.test(part.text.slice(token.start, token.end));
}
