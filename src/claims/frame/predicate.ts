import type { Framed, Turn } from './english';
import type { Governor } from './governor';
import type { Word } from './types';

/** Words that make what is named in a clause an offer, a wish or a thing of its own. */
const OFFERED =
  /^(?:separately|preferred|considered|welcome|wanted|available|listed|gone|instead|elsewhere|exchange|swap|swaps|trade|px|please|required|needed|sought|anyone|somebody|someone)$/;
const WORKED =
  /^(?:tested|serviced|working|used|checked|tried|replaced|fitted|oiled|fixed|repaired|overhauled|cleaned)$/;
const TRIED = /^(?:test(?:ed)?|tried|us(?:e|ed)|like[ds]?|love[ds]?|sell|checked|fitted|have|had|got)$/;
/** "… are from a shuttle machine": of another. */
const FROM = /^(?:from|off|for)$/;
/** "Cast iron construction that modern machines cannot match." */
const OPENS_RELATIVE = /^(?:that|which|who|whose)$/;
const LOOK_AHEAD = 4;
/** In a sentence that runs on without a stop, what is wanted far behind is something else. */
const MOST_OF_AN_OFFER = 12;

const BESIDE = /^(?:behind|beside|next|alongside)$/;
const NOT_SUCH = /^(?:like|plastic|cheap|modern|some|the|your)$/;
const BARELY = /^(?:never|barely|hardly)$/;
const TOUCHED = /^(?:worn|used|touched|chipped|scratched|failed|marked)$/;

/** A phrase that opens its clause: a list's item, or the subject of what follows ("zigzag works well"). */
export function predicateTurns({ words, first, last }: Framed, governor: Governor): Turn | null {
  const rest = upToContrast(words.slice(last + 1));
  // "The big one was mother's, the alloy one my brother's."
  if (rest[0]?.is === 'possessive' && rest.length <= 3) return { to: 'other', word: rest[0] };
  // "Class 15 jams it", "class 15 will jam".
  const jams = rest.slice(0, 2).find(({ folded }) => /^jam(?:s|med)?$/.test(folded));
  if (jams) return { to: 'other', word: jams };
  const offered = rest.slice(0, MOST_OF_AN_OFFER).find(({ folded }) => OFFERED.test(folded));
  if (offered) return { to: 'other', word: offered };
  const also = rest.find(({ folded }, i) => folded === 'also' && rest.slice(i).some(({ is }) => is === 'sells'));
  if (also) return { to: 'other', word: also };
  const sold = rest.find(({ is }, i) => is === 'sells' && rest[i - 1]?.is === 'be');
  if (sold) return { to: 'other', word: sold };
  const fitting = rest.find(
    ({ folded }, i) =>
      folded === 'for' && /^(?:those|others|later|earlier|older|newer)$/.test(rest[i + 1]?.folded ?? ''),
  );
  if (fitting) return { to: 'other', word: fitting };
  const strange = rest.find(
    ({ is }, i) =>
      is === 'be' &&
      FROM.test(rest[i + 1]?.folded ?? '') &&
      /^(?:a|an|another|my|some|something|others?|different|else)$/.test(rest[i + 2]?.folded ?? ''),
  );
  if (strange) return { to: 'other', word: strange };
  // "The free arm on the cover is a later model."
  const later = rest.find(
    ({ is }, i) => is === 'be' && /^(?:later|earlier|newer|older|different)$/.test(rest[i + 2]?.folded ?? ''),
  );
  if (later) return { to: 'other', word: later };
  // "The green one behind it is …": beside this one.
  if (rest[0] && BESIDE.test(rest[0].folded) && /^(?:one|machine)$/.test(words[last]!.folded))
    return { to: 'other', word: rest[0] };
  const only = words[first - 1];
  if (only?.folded === 'only' && words[first - 2]?.folded === 'the' && rest.some(({ is }) => is === 'be'))
    return { to: 'other', word: only };
  // "A cast iron one of that size would weigh twice as much": of the kind.
  const would = rest.find(({ is }) => is === 'would');
  if (would && first <= 1 && governor.determiner && /^an?$/.test(governor.determiner.folded))
    return { to: 'guesses', word: would };
  const owner = rest[0];
  // "The class 66 bobbins I threw out": what somebody did with it, unless they tried it.
  if (owner && /^(?:i|we|he|she|they)$/.test(owner.folded) && !rest.some(({ folded }) => TRIED.test(folded)))
    return { to: 'other', word: owner };
  const verb = rest.findIndex(({ is }) =>
    ['be', 'have', 'asserts', 'takes', 'uses', 'can', 'would', 'not', 'deals', 'speech', 'sells'].includes(is),
  );
  if (verb < 0 || words.slice(0, first).some(({ is }) => is === 'begins')) return null;
  const found = rest[verb]!;
  // Only what stands right behind the phrase is said of it.
  if (
    rest
      .slice(0, verb)
      .some(
        ({ is, folded }) =>
          is === 'joins' ||
          is === 'it' ||
          is === 'person' ||
          is === 'begins' ||
          is === 'prep' ||
          OPENS_RELATIVE.test(folded),
      )
  )
    return (rest[0]!.is === 'person' && !/^you (?:can|could)$/.test(`${rest[0]!.folded} ${rest[1]?.folded}`)) ||
      rest[0]!.is === 'possessive'
      ? { to: 'other', word: rest[0]! }
      : null;
  const next = rest.slice(verb, verb + LOOK_AHEAD);
  // "The zigzag one is our lodger's."
  const whose = next[1];
  if (found.is === 'be' && whose && (whose.is === 'possessive' || /[a-z]'s$/.test(whose.folded)))
    return { to: 'other', word: whose };
  if (next.some(({ folded }) => WORKED.test(folded))) return null;
  if (next.some(({ is }) => is === 'speech')) return { to: 'quotes', word: found };
  // "The zigzag works as it should."
  const asItShould = ({ folded }: Word, i: number): boolean => folded === 'should' && next[i - 1]?.folded === 'it';
  if (next.some((word, i) => word.is === 'not' || (word.is === 'would' && !asItShould(word, i))))
    return { to: 'guesses', word: found };
  if (/^(?:was|were|had|came|cost|arrived|existed|became|went)$/.test(found.folded))
    return { to: 'other', word: found };
  // "The alloy casting keeps the weight down."
  if (/^keeps?$/.test(found.folded)) return null;
  if (found.is === 'deals' || found.is === 'speech' || found.is === 'sells') return { to: 'other', word: found };
  return isGeneric(words, first, last, governor) ? { to: 'other', word: found } : null;
}

/** "Cast iron not plastic", "transfers barely worn": what it is not, or was not done to it, says nothing against it. */
function upToContrast(rest: readonly Word[]): readonly Word[] {
  const at = rest.findIndex(
    ({ folded }, i) =>
      (folded === 'not' && (i === 0 ? NOT_SUCH : /^like$/).test(rest[i + 1]?.folded ?? '')) ||
      (BARELY.test(folded) && TOUCHED.test(rest[i + 1]?.folded ?? '')),
  );
  return at < 0 ? rest : rest.slice(0, at);
}

/** "A free arm is handy", "zigzags have their place": of the kind, not of this one. */
function isGeneric(words: readonly Word[], first: number, last: number, { determiner }: Governor): boolean {
  if (determiner && /^(?:a|an)$/.test(determiner.folded)) return true;
  const verb = words[last + 1];
  return (
    first === 0 &&
    verb !== undefined &&
    /^(?:have|are|do|were)$/.test(verb.folded) &&
    /[^s]s$/.test(words[last]!.folded)
  );
}
