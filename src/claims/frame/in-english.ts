import type { Hit } from '../hits';
import { type ClauseRange, clauseIndexAt, type TextPart } from '../part-text';
import { type Known, wordsOf } from './clause-words';
import { frameTurns, type Turn } from './english';
import { isOfOthers, subjectOf } from './subject-of';
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
  const words = statementOf(wordsOf(part, clause, english, known), hit.firstToken);
  const first = words.findIndex(({ token }) => token === hit.firstToken);
  let last = words.findLastIndex(({ token }) => token === hit.lastToken);
  if (first < 0 || last < first) return null;
  // The feature's own noun phrase: "zigzag sewing machine".
  while (isOfPhrase(words[last], words[last + 1])) last++;
  const isOfThing = words.slice(first, last + 1).some(({ folded }) => /^(?:machine|one|model|version)s?$/.test(folded));
  const changed = ifChanged(part, clause, words.slice(0, first));
  if (changed) return { to: 'guesses', word: changed };
  const afterPerson = isAfterPerson(part, hit.firstToken);
  return (
    frameTurns({ words, first, last, isOfThing, denied, afterPerson }) ?? appositionTurns(part, clause, words, known)
  );
}

/** "With the table on, it is …", "slide the table on and you have …": of the thing as it can be made. */
function ifChanged(part: TextPart, clause: ClauseRange, before: readonly Word[]): Word | null {
  const you = before.find(({ folded }, i) => folded === 'you' && before[i - 1]?.is === 'joins');
  if (you && CHANGE_IT.test(before[0]!.folded)) return you;
  const previous = part.clauses[clauseIndexAt(part, clause.first) - 1];
  if (previous?.sentence !== clause.sentence || !before[0] || !/^(?:it|this|she)$/.test(before[0].folded)) return null;
  const words = previous.tokens.filter(({ kind }) => kind === 'word');
  return words[0]?.folded === 'with' && AS_SET.test(words.at(-1)!.folded) ? before[0] : null;
}

const CHANGE_IT =
  /^(?:slide|put|clip|add|fit|attach|remove|take|pull|lift|fold|push|press|turn|swing|drop|flip|unclip|unscrew|just|simply|then)$/;
const AS_SET = /^(?:on|in|off|fitted|attached|removed|down|up|out|open|closed|extended)$/;

/** "They had a big one, an alloy brute": an apposition is of what they had. */
function appositionTurns(part: TextPart, clause: ClauseRange, words: readonly Word[], known: Known): Turn | null {
  const previous = part.clauses[clauseIndexAt(part, clause.first) - 1];
  if (previous?.sentence !== clause.sentence || !/^an?$/.test(words[0]?.folded ?? '')) return null;
  const before = wordsOf(part, previous, english, known);
  const head = before.at(-1);
  if (head && isOfOthers(before, before.length - 1)) return { to: 'other', word: head };
  const verb = before.findIndex(({ is, folded }) => is === 'have' || is === 'deals' || folded === "'d");
  if (verb < 0 || !['person', 'they'].includes(subjectOf(before, verb))) return null;
  const isSellers = before.slice(0, verb).some(({ folded }) => /^(?:i|we|you)$/.test(folded));
  return isSellers ? null : { to: 'other', word: before[verb]! };
}

/**
 * "She sewed on it and it goes well and it takes a long bobbin": of a sentence that runs on, the statement in which the
 * phrase stands, unless what goes before has it all in its power ("I think it is alloy and it does zigzag").
 */
function statementOf(words: Word[], token: number): Word[] {
  const at = words.findIndex((word) => word.token === token);
  for (let i = at - 2; i > 0; i--) {
    if (!/^(?:it|this)$/.test(words[i]!.folded) || !startsVerb(words[i + 1])) continue;
    if (words[i - 1]!.is !== 'joins' && !CONCLUDES.test(words[i - 1]!.folded)) continue;
    const governed = words.slice(0, i).some(({ is }) => is === 'speech' || is === 'thinks' || is === 'supposes');
    return governed ? words : words.slice(i);
  }
  return words;
}

/** "Mine is the later sort, which means it takes …". */
const CONCLUDES = /^(?:means|meaning|so|hence)$/;

const isVerb = (word: Word | undefined): boolean =>
  word !== undefined && ['be', 'have', 'asserts', 'takes', 'can', 'not'].includes(word.is);

/** A verb, or one that begins a phrase of some pack ("does straight stitch"). */
const startsVerb = (word: Word | undefined): boolean => isVerb(word) || /^(?:does|has|takes)$/.test(word?.folded ?? '');

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
