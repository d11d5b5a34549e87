import { fittingTo } from '../../text/fitted';
import { fold } from '../../text/fold';

/** How much of the words of `a` also stand in `b`: 0 to 1. */
export function sharedWords(a: string, b: string): number {
  const words = wordsOf(a);
  if (words.length === 0) return 0;
  const other = wordsOf(b);
  // Of few words a list is looked through as soon as a set is made.
  const among = other.length > FEW ? new Set(other) : null;
  let shared = 0;
  for (const word of words) if (among ? among.has(word) : other.includes(word)) shared++;
  return shared / words.length;
}

const WORDS = fittingTo('gu')`[\p{L}\p{N}]+`;
/** Words and numbers, as they are written. */
export const allWordsOf = (text: string): readonly string[] => text.match(WORDS(text)) ?? [];

const FEW = 30;
const KNOWN_MOST = 1000;
/** The same titles are held against many texts. */
const known = new Map<string, readonly string[]>();

export function wordsOf(text: string): readonly string[] {
  const before = known.get(text);
  if (before) return before;
  const words = allWordsOf(fold(text.slice(0, 1000)).text);
  if (known.size >= KNOWN_MOST) known.clear();
  known.set(text, words);
  return words;
}
