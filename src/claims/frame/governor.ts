import { isOfOthers } from './subject-of';
import type { Word, WordClass } from './types';

/** What governs a phrase in its clause, found by going left over what merely stands beside it. */
export interface Governor {
  /** Index into the clause's words, -1 for none: the phrase opens the clause. */
  at: number;
  is: WordClass | 'start';
  /** The first determiner before the phrase. */
  determiner: Word | null;
  /** A "with" stands between: the phrase comes with what is governed. */
  accompanies: boolean;
  /** An "and" stands between. */
  joined: boolean;
}

/** "Made of alloy", "casting in aluminium": the preposition says what the noun or verb before it consists of. */
const CONSISTS =
  /^(?:made|built|cast|constructed|construction|consists?|full|because|all|benefit|advantage|luxury|bonus|best|feature|features|one|out)$/;
const PASSED: Record<string, RegExp> = {
  with: /./,
  w: /./,
  in: /./,
  of: CONSISTS,
  from: /^(?:made|built|cast|constructed|apart|aside|straight|runs?|works?|driven|powered)$/,
  off: /^(?:runs?|running|works?|driven|powered)$/,
  to: /^(?:convert\w*|chang\w*|switch\w*|flip\w*|turn\w*|adapt\w*|set|built|made|up|thanks|due|addition|up|able|over|straight)$/,
  into: /^(?:convert\w*|chang\w*|turn\w*|made|built)$/,
  as: /^(?:such|same|doubles?|works?|used|serves?|well|acts?|designed|built)$/,
  over: /^(?:flips?|flipped|turns?|changes?|converts?|switches)$/,
  by: /^(?:driven|powered|worked|operated|run)$/,
  on: /^(?:tested|tried|works?|working|checked|sews|runs|both|well)$/,
  for: /./,
};

const EASY = /^(?:light|easy|nice|simple|quick|lovely|heavy|quiet|great|good)$/;
const SUITED = /^(?:good|great|ideal|perfect|suitable|excellent|fine|brilliant|handy|useful|better|best)$/;

export function governorOf(words: readonly Word[], first: number): Governor {
  let determiner: Word | null = null;
  let accompanies = false;
  let joined = false;
  let verbish = -1;
  const answer = (at: number, is: Governor['is']): Governor => ({ at, is, determiner, accompanies, joined });
  for (let i = first - 1; i >= 0; i--) {
    const word = words[i]!;
    const before = words[i - 1];
    switch (word.is) {
      case 'plain':
        if (/[^s]s$|ed$/.test(word.folded)) verbish = i;
        break;
      case 'adverb':
      case 'feature':
      case 'part':
      case 'there':
        break;
      case 'own':
        // "This machine predates zigzag": an unknown verb may stand between.
        if (verbish === i + 1) return answer(verbish, 'thinks');
        break;
      case 'article':
        determiner ??= word;
        break;
      case 'joins':
        joined = true;
        break;
      case 'to':
      case 'prep': {
        if (word.folded === 'to' && isVerb(words[i + 1])) break;
        // "Choose from 22 decorative stitches".
        if (word.folded === 'from' && /^(?:choos\w+|choice|select\w*|pick)$/.test(before?.folded ?? ''))
          return answer(-1, 'start');
        // "Perfect for jersey thanks to its zigzag": whatever it is good for.
        if (word.folded === 'to' && /^(?:thanks|due)$/.test(before?.folded ?? '')) return answer(-1, 'start');
        // "Light to lift with its alloy body".
        if (word.folded === 'to' && EASY.test(before?.folded ?? '')) return answer(-1, 'start');
        // "A rare chance to own one with zigzag".
        if (word.folded === 'to' && /^(?:chance|opportunity)$/.test(before?.folded ?? '')) return answer(-1, 'start');
        // "Spokes on the wheel and black enamel": beside what stands before the "on".
        if (joined && before?.is === 'feature' && /^(?:on|in|at|to)$/.test(word.folded)) break;
        // "About a dozen decorative stitches": how many.
        if (/^(?:about|around|over)$/.test(word.folded) && COUNTS.test(words[i + 2]?.folded ?? '')) break;
        // "Flips over to", "comes out of": a particle of the verb before it.
        if (words[i + 1]?.is === 'to' || words[i + 1]?.is === 'prep') break;
        // "The newer plastic one with zigzag": of that one.
        if (before && isOfOthers(words, i - 1)) return answer(i - 1, 'generic');
        if (word.folded === 'with' || word.folded === 'w') accompanies = true;
        if (endsBefore(words, i, first)) return answer(-1, 'start');
        // "Run it off the pedal": of what runs it.
        if (word.folded === 'off' && before?.folded === 'it' && PASSED.off!.test(words[i - 2]?.folded ?? ''))
          return answer(-1, 'start');
        const passed = PASSED[word.folded];
        if (!passed || (before ? !passed.test(before.folded) && !isOwnOf(word, before) : word.folded === 'of'))
          return answer(i, word.is);
        // "A free arm for sleeves and a motor": of what stands before the "and".
        if (word.folded === 'for' && joined) break;
        // "Good for leather": it may do that well, or only be praised for it.
        if (word.folded === 'for' && before && SUITED.test(before.folded)) return answer(i, 'prep');
        if (word.folded === 'for' && determiner && determiner.folded !== 'the') return answer(i, 'prep');
        break;
      }
      case 'it':
        if (verbish === i + 1) return answer(verbish, 'thinks');
        return answer(i, 'it');
      case 'generic':
      case 'possessive':
        // "Takes any class 15 bobbin", "any class 15 bobbin will do": what it takes, it is made for.
        if (word.folded === 'any' && (before ? before.is === 'takes' : isDoing(words, first))) break;
        // "Uses those long bobbins that …".
        if (/^(?:those|these)$/.test(word.folded) && before?.is === 'takes') break;
        // "With some needles and zigzag": of the other thing joined.
        if (joined || accompanies) break;
        return answer(i, word.is);
      default:
        return answer(i, word.is);
    }
  }
  return answer(-1, 'start');
}

/** Words without a stop from which on a clause is a list that runs on. */
const RUNS_ON = 18;

/** "… gone at the edge spoked wheel round needles …": its noun ends what a preposition governs, where features follow. */
function endsBefore(words: readonly Word[], preposition: number, first: number): boolean {
  const [article, noun, next] = words.slice(preposition + 1, preposition + 4);
  return (
    words.length > RUNS_ON &&
    article?.is === 'article' &&
    noun?.is === 'plain' &&
    next?.is === 'feature' &&
    preposition + 3 < first
  );
}

/** "Any … will do", "any … fits". */
function isDoing(words: readonly Word[], from: number): boolean {
  const verb = words.slice(from).find(({ is }) => is === 'can' || is === 'asserts' || is === 'uses' || is === 'not');
  return verb !== undefined && /^(?:will|fits?|works?|does)$/.test(verb.folded);
}

const COUNTS = /^(?:dozen|score|hundred|couple)$/;

function isVerb(word: Word | undefined): boolean {
  return word !== undefined && ['be', 'have', 'asserts', 'takes', 'uses', 'deals', 'sells'].includes(word.is);
}

function isOwnOf(preposition: Word, before: Word): boolean {
  return preposition.folded === 'of' && (before.is === 'own' || before.folded === 'machine');
}
