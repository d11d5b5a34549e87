import type { Hit } from '../hits';
import type { ClauseRange, TextPart } from '../part-text';
import { type Known, wordsOf } from './clause-words';
import { frameTurns, type Turn } from './english';
import type { Word } from './types';
import { english } from './words-en';

/** Tokens back in which a person may have been spoken of. */
const RECENT = 60;

/** What an English clause makes of the feature found in it. */
export function turnInEnglish(
  part: TextPart,
  clause: ClauseRange,
  hit: Hit,
  known: Known,
  denied: boolean,
): Turn | null {
  const words = wordsOf(part, clause, english, known);
  const first = words.findIndex(({ token }) => token === hit.firstToken);
  let last = words.findLastIndex(({ token }) => token === hit.lastToken);
  if (first < 0 || last < first) return null;
  // The feature's own noun phrase: "zigzag sewing machine".
  while (isOfPhrase(words[last], words[last + 1])) last++;
  const isOfThing = words.slice(first, last + 1).some(({ folded }) => /^(?:machine|one|model|version)s?$/.test(folded));
  return frameTurns({ words, first, last, isOfThing, denied, afterPerson: isAfterPerson(part, hit.firstToken) });
}

function isOfPhrase(word: Word | undefined, next: Word | undefined): boolean {
  if (!word || !next) return false;
  return (next.is === 'own' || next.is === 'feature') && next.token - word.token <= 2;
}

/** A person is spoken of shortly before: "she" may be that one. */
function isAfterPerson(part: TextPart, token: number): boolean {
  for (let i = token - 1; i >= 0 && token - i <= RECENT; i--) {
    const { folded } = part.tokens[i]!;
    if (folded.length > 3 && english.classOf(folded) === 'person') return true;
  }
  return false;
}
