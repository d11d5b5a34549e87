import { governorOf } from './governor';
import { predicateTurns } from './predicate';
import { subjectOf } from './subject-of';
import type { Word } from './types';

/** What a clause's frame makes of a phrase: no assertion of this thing. */
export interface Turn {
  to: 'other' | 'guesses' | 'quotes';
  /** The word that decided. */
  word: Word;
}

export interface Framed {
  words: readonly Word[];
  /** The phrase, as indices into the words. */
  first: number;
  last: number;
  /** The noun that ends the phrase's own noun phrase is one for the thing ("zigzag machine"). */
  isOfThing: boolean;
  /** "no", "without" govern it. */
  denied: boolean;
  /** An earlier sentence speaks of a person, so that "she" may be that one. */
  afterPerson: boolean;
}

/**
 * A feature is claimed of the thing only where its clause says so: the thing has, is, does or takes it, or the words
 * stand alone as in a list. What is bought, wished for, compared, remembered, said by others, or of another subject
 * isn't.
 * @returns null where the clause asserts it (or denies it) of the thing.
 */
export function frameTurns(framed: Framed): Turn | null {
  const { words, first, isOfThing, denied } = framed;
  const governor = governorOf(words, first);
  const word = words[governor.at];
  const said = embedded(words, governor.at);
  if (said) return said;
  const other = onOthers(framed) ?? partOf(framed) ?? toldApart(framed, governor.determiner);
  if (other) return { to: 'other', word: other };
  if (!word) return predicateTurns(framed, governor);
  switch (governor.is) {
    case 'prep':
    case 'to':
      if (word.folded === 'as' && SOLD_AS.test(words[governor.at - 1]?.folded ?? '')) return { to: 'quotes', word };
      if (word.folded === 'as' && !words[governor.at - 1]) return predicateTurns(framed, governor);
      return denied && /^(?:without|minus|for|except)$/.test(word.folded) ? null : { to: 'other', word };
    case 'generic':
    case 'possessive':
      return { to: 'other', word };
    case 'nearly':
      return { to: 'other', word };
    case 'lacks':
      return denied ? null : { to: 'other', word };
    case 'supposes':
      return { to: 'guesses', word };
    case 'begins':
    case 'not':
      return predicateTurns(framed, governor);
    case 'would':
      return { to: 'guesses', word };
    case 'deals':
      // "Goes forward and reverse", "it goes backwards".
      if (/^go(?:es)?$/.test(word.folded) && subjectOf(words, governor.at) !== 'person')
        return bySubject(framed, governor.at, governor.determiner);
      return governor.determiner?.folded === 'this' ? null : { to: 'other', word };
    case 'sells':
      return words.some(({ folded }) => /^(?:also|too|separately|another)$/.test(folded))
        ? { to: 'other', word }
        : null;
    case 'speech':
      return isPlainlySaid(words, governor.at) ? null : { to: 'quotes', word };
    case 'thinks':
      return { to: 'guesses', word };
    case 'it':
      return null;
    case 'can':
      return bySubject(framed, governor.at, governor.determiner);
    case 'they':
    case 'person':
      if (word.folded !== 'you') return { to: 'other', word };
      return isChangedBy(words, governor.at - 1) ? { to: 'guesses', word } : null;
    default: {
      if (modal(words, governor.at)) return { to: 'guesses', word: modal(words, governor.at)! };
      if (governor.accompanies && isOfThing && word.is !== 'be') return { to: 'other', word };
      return bySubject(framed, governor.at, governor.determiner);
    }
  }
}

/** "Meant for the alloy one", "that's the zigzag version": what is told apart from this one by its feature. */
function toldApart({ words, first, last }: Framed, determiner: Word | null): Word | null {
  if (determiner?.folded !== 'the' || !TOLD_APART.test(words[last]!.folded)) return null;
  const at = words.lastIndexOf(determiner, first);
  const before = words[at - 1];
  if (before?.is === 'prep' && !/^(?:in|as|with|w)$/.test(before.folded)) return before;
  const that = words[at - 2];
  return before?.is === 'be' && at <= 3 && that && /^(?:that|those|these)$/.test(that.folded) ? that : null;
}

/** "The hook of the earlier ones", "an alloy one on the other site". */
function onOthers({ words, last }: Framed): Word | null {
  const [of, ...rest] = words.slice(last + 1, last + 5);
  if (!of || !/^(?:of|on|in|from)$/.test(of.folded)) return null;
  const at = rest.findIndex(({ folded }) => OTHERS.test(folded) || HOLDERS.test(folded));
  return at < 0 || /^(?:hand|side|end)$/.test(rest[at + 1]?.folded ?? '') ? null : rest[at]!;
}

/** "Face plate and wheel in alloy": of parts alone. */
function partOf({ words, first }: Framed): Word | null {
  const before = words.slice(0, first);
  if (before[0]?.is !== 'part' || !/^(?:in|of)$/.test(before.at(-1)!.folded)) return null;
  return before.some(({ is }) => is === 'own' || is === 'it' || is === 'feature') ? null : before[0];
}

/** "The long bobbins in the tin": of what lies there. */
const HOLDERS = /^(?:tin|photo|photos|picture|pictures|drawer|carton|cover|page|leaflet)$/;
const OTHERS = /^(?:earlier|later|older|newer|other|others|modern|previous|next)$/;
const TOLD_APART = /^(?:one|ones|sort|kind|version|model|variety|type)$/;

function bySubject({ words, afterPerson }: Framed, verb: number, determiner: Word | null): Turn | null {
  const word = words[verb]!;
  const subject = subjectOf(words, verb);
  if (subject === 'stranger' || subject === 'they') return { to: 'other', word };
  if (isChangedBy(words, verb)) return { to: 'guesses', word };
  const spokenOf = words.slice(0, verb).some(({ folded }) => /^(?:she|he)$/.test(folded));
  // "She is a flatbed": no person is.
  const isPerson = subject === 'person' || (word.is !== 'be' && spokenOf && (afterPerson || word.folded === 'had'));
  if (!isPerson) return existed(words, verb) ? { to: 'other', word } : null;
  if (words[verb - 1]?.folded === 'you' || words.slice(0, verb).some(({ folded }) => folded === 'you')) return null;
  const worked = words.some(({ folded }, i) => folded === 'it' && /^(?:in|on|with)$/.test(words[i - 1]?.folded ?? ''));
  // "I tried class 15, they're too tall", not "I tried the zigzag".
  if (/^(?:tried|trying|try)$/.test(word.folded) && !determiner) return { to: 'guesses', word };
  // "I've taken the long bobbins out."
  if (/^(?:taken|took)$/.test(word.folded)) return { to: 'other', word };
  return word.is === 'uses' || (word.is === 'takes' && (determiner?.folded === 'the' || worked))
    ? null
    : { to: 'other', word };
}

/** "There was an alloy version." */
function existed(words: readonly Word[], verb: number): boolean {
  return (
    words[verb]!.is === 'be' &&
    /^(?:was|were|been)$/.test(words[verb]!.folded) &&
    words.slice(0, verb).some(({ is }) => is === 'there')
  );
}

/** "Would have", "must be", "supposed to be". */
function modal(words: readonly Word[], verb: number): Word | null {
  for (let i = verb - 1; i >= 0 && verb - i <= 4; i--) {
    const word = words[i]!;
    if (word.is === 'would') return word;
    if (!['be', 'have', 'adverb', 'not', 'to'].includes(word.is)) {
      if (
        words.slice(Math.max(0, i - 3), i + 1).some(({ folded }) => folded === 'too') &&
        words[i + 1]?.folded === 'to'
      )
        return word;
      return words[i + 1]?.folded === 'to' && (word.is === 'thinks' || word.is === 'deals' || word.folded === 'used')
        ? word
        : null;
    }
  }
  return null;
}

/** "People will tell you that it is …": a verb of saying or thinking farther left has it all in its power. */
function embedded(words: readonly Word[], before: number): Turn | null {
  for (let i = before - 1; i >= 0; i--) {
    const word = words[i]!;
    if (word.is === 'speech' && !isPlainlySaid(words, i)) return { to: 'quotes', word };
    if (word.is === 'thinks') return { to: 'guesses', word };
    if (word.is === 'supposes' || (word.is !== 'own' && WISHES.test(word.folded))) return { to: 'guesses', word };
  }
  return null;
}

/** "The extension table gives you a flat bed": with that on. */
function isChangedBy(words: readonly Word[], verb: number): boolean {
  return CHANGES.test(words[verb]?.folded ?? '') && words[verb - 1]?.is === 'part';
}

const CHANGES = /^(?:gives?|makes?|turns?|converts?|provides?|allows?)$/;
const WISHES = /^(?:wish\w*|want\w*|hop(?:e|es|ed|ing)|imagine|pretend\w*|prefer\w*)$/;
const SOLD_AS =
  /^(?:sold|listed|advertised|described|labelled|labeled|known|called|marketed|branded|bought|catalogued|billed)$/;

/** "I can tell you", "as described", "needless to say", "I say": said by the seller as so. */
function isPlainlySaid(words: readonly Word[], at: number): boolean {
  const before = words[at - 1];
  if (words[at]!.folded === 'say' && (before?.folded === 'i' || before?.folded === 'we')) return true;
  const who = words[at - 2]?.folded;
  const canSay = before?.is === 'can' && (who === undefined || /^(?:i|we|you)$/.test(who));
  return before !== undefined && (before.folded === 'to' || before.folded === 'as' || canSay);
}
