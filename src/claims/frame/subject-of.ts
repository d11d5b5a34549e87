import type { Word } from './types';

/** Whose is what a verb says: this thing's, a person's, other things', something unknown's, or nobody is named. */
export type SubjectKind = 'this' | 'person' | 'they' | 'stranger' | 'none';

const SKIPPED = new Set(['adverb', 'can', 'would', 'not', 'be', 'have', 'to', 'uses', 'asserts', 'takes']);
/** "My new machine", "the other one", "later models", "next door's machine". */
const OTHERS =
  /^(?:other|another|new|newer|old|modern|everyday|main|previous|last|next|first|second|spare|next-door|later|earlier|early|late|similar|such|these|those|they|most|some|many|all|any|export|own|standard|usual|ordinary|sister|successor)$/;
const SHOWN_IN = /^(?:picture|photo|photograph|background)$/;
const PLURAL_OWN = /^(?:machines|models|ones|versions|heads|types|maschinen|modelle)$/;

/** @param verb the index of the verb in the clause's words. */
export function subjectOf(words: readonly Word[], verb: number): SubjectKind {
  let i = verb - 1;
  while (i >= 0 && SKIPPED.has(words[i]!.is)) i--;
  const head = words[i];
  if (!head || head.is === 'joins') return inherited(words, i);
  if (head.is === 'begins' || head.is === 'supposes') return isRelative(head) ? relative(words, i) : 'none';
  if (head.is === 'there') return 'this';
  // "That has a lamp in the head": of what was spoken of, not of "this".
  if (i === 0 && /^(?:that|those)$/.test(head.folded)) return 'they';
  if (head.is === 'prep') return stranded(words, i);
  if (head.is === 'it') return head.folded === 'mine' || !ofAnother(words, i) ? 'this' : 'they';
  if (head.is === 'person') return 'person';
  if (head.is === 'they' || head.is === 'generic') return head.folded === 'which' ? relative(words, i) : 'they';
  if (isPossessive(head)) return 'they';
  const phrase = nounPhrase(words, i);
  if (i > 0 && words[i - 1]!.is === 'person' && phrase.from > 0 && words[phrase.from - 1]!.is === 'person')
    return 'they';
  if (phrase.opensAfter === 'prep')
    // "The green one in the picture is …": beside this one.
    return SHOWN_IN.test(head.folded) && /^(?:one|machine)$/.test(words[phrase.from - 2]?.folded ?? '')
      ? 'they'
      : afterPreposition(words, phrase.from - 1);
  if (head.is === 'own') return PLURAL_OWN.test(head.folded) || ofAnother(words, i) ? 'they' : 'this';
  if (head.is === 'feature' || head.is === 'part') return 'this';
  if (head.is !== 'plain') return 'none';
  // "Works well has zigzag": a noun's phrase has an article or opens the clause.
  return phrase.hasArticle || phrase.from === 0 ? 'stranger' : 'none';
}

const isRelative = (word: Word): boolean => /^(?:which|that|who)$/.test(word.folded);

/** "The grille, which has", "someone who has": what the relative clause is of stands before. */
function relative(words: readonly Word[], at: number): SubjectKind {
  const before = words[at - 1];
  if (!before) return 'none';
  if (before.is === 'person') return 'person';
  if (before.is === 'plain') return 'stranger';
  return before.is === 'own' && (PLURAL_OWN.test(before.folded) || ofAnother(words, at - 1)) ? 'they' : 'this';
}

/** "… and has": whoever the verb before had. */
function inherited(words: readonly Word[], joint: number): SubjectKind {
  for (let i = joint - 1; i >= 0; i--) {
    const { is } = words[i]!;
    if (is === 'be' || is === 'have' || is === 'asserts' || is === 'takes' || is === 'deals' || is === 'uses')
      return subjectOf(words, i);
  }
  return 'none';
}

interface Phrase {
  from: number;
  hasArticle: boolean;
  opensAfter: 'prep' | 'other';
}

function nounPhrase(words: readonly Word[], head: number): Phrase {
  let hasArticle = false;
  let i = head;
  for (; i >= 0; i--) {
    const word = words[i]!;
    if (word.is === 'article' || word.is === 'possessive') {
      hasArticle = true;
      i--;
      break;
    }
    if (word.is !== 'plain' && word.is !== 'own' && word.is !== 'feature' && word.is !== 'part') break;
  }
  return { from: i + 1, hasArticle, opensAfter: words[i]?.is === 'prep' ? 'prep' : 'other' };
}

/** "The grille of the lamp has": the noun before the preposition; "in good order has": nobody. */
function afterPreposition(words: readonly Word[], preposition: number): SubjectKind {
  const before = words[preposition - 1];
  if (before?.is !== 'plain') return before?.is === 'own' && ofAnother(words, preposition - 1) ? 'they' : 'none';
  const phrase = nounPhrase(words, preposition - 1);
  return phrase.hasArticle && phrase.opensAfter === 'other' ? 'stranger' : 'none';
}

/** "The trolley it comes on is": what opens the clause. */
function stranded(words: readonly Word[], preposition: number): SubjectKind {
  const from = words[0]?.is === 'article' || words[0]?.is === 'possessive' ? 1 : 0;
  const opening = words
    .slice(from, preposition)
    .find(({ is }) => is === 'plain' || is === 'own' || is === 'person' || is === 'it');
  const spoken = words.slice(from, preposition).some(({ is }) => is === 'person');
  if (opening?.is === 'plain' && from > 0) return 'stranger';
  return opening?.is === 'own' && spoken ? 'they' : 'none';
}

const isPossessive = (word: Word): boolean => /[a-z]'s$|s'$/.test(word.folded);

/** "Her other machine", "the neighbours' one". */
export function isOfOthers(words: readonly Word[], at: number): boolean {
  const head = words[at]!;
  return (head.is === 'own' || head.is === 'it') && ofAnother(words, at);
}

/** Does the noun at `at` have words before it that make it another than the one on sale? */
function ofAnother(words: readonly Word[], at: number): boolean {
  for (let i = at - 1; i >= 0 && at - i <= 4; i--) {
    const word = words[i]!;
    if (word.is === 'prep' || word.is === 'be' || word.is === 'have' || word.is === 'joins') return false;
    if (isPossessive(word) || word.is === 'generic' || (OTHERS.test(word.folded) && isDetermined(words, i)))
      return true;
    if (word.is === 'possessive' && word.folded !== 'my' && word.folded !== 'our') return true;
  }
  return false;
}

/** "My old machine" is another; "nice old machine" and "the old machine" need not be. */
function isDetermined(words: readonly Word[], at: number): boolean {
  const { folded } = words[at]!;
  if (!/^(?:old|new|first|last|late|early|second|standard|modern|main|spare)$/.test(folded)) return true;
  return words[at - 1]?.is === 'possessive' || /'s$/.test(words[at - 1]?.folded ?? '');
}
