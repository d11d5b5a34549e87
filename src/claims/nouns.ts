import { fold } from '../text/fold';
import { beginningWithin, contains, type Hit, hitsOver, LONGEST_PHRASE, ofKind } from './hits';
import type { CueMatch } from './kind-cues';
import { type TextPart, tokenAt } from './part-text';
import type { NameClaim } from './reading';

/** Phrases of these kinds say what a part's noun inside them is part of. */
const NAMING_KINDS: ReadonlySet<string> = new Set(['value', 'thing', 'not-thing', 'part', 'wording']);

/** A word or phrase that can be what is on sale. */
export interface Noun {
  what: 'thing' | 'part' | 'name';
  firstToken: number;
  lastToken: number;
  plural: boolean;
  /** A name, or a word for the thing that is a maker's name as well. */
  isName: boolean;
}

/** The nouns of a text, in order. */
export function nounsIn(
  part: TextPart,
  hits: readonly Hit[],
  names: readonly NameClaim[],
  cues: readonly CueMatch[],
): Noun[] {
  const donors = cues.filter(({ value }) => value === 'as-donor');
  // "Small hand crank": a machine of that drive, as a pack calls the crank itself too.
  const isDrive = (hit: Hit): boolean =>
    hit.lastToken > hit.firstToken &&
    hitsOver(hits, hit.firstToken).some(
      ({ value, firstToken, lastToken }) =>
        value.kind === 'value' && firstToken === hit.firstToken && lastToken === hit.lastToken,
    );
  const isHeld = (hit: Hit): boolean =>
    isDrive(hit) ||
    hitsOver(hits, hit.firstToken).some((other) => NAMING_KINDS.has(other.value.kind) && contains(other, hit)) ||
    beginningWithin(donors, hit.firstToken - LONGEST_PHRASE, hit.firstToken).some((cue) => contains(cue, hit));
  const inField = names.filter(({ field }) => field === part.field);
  const own = inField.map((name) => tokensOf(part, name));
  // "24 'POSTMISTRESS'": a name that ends so is no plural.
  const singular = new Set(inField.flatMap((name, i) => (isAsPacksWrite(name) ? [own[i]!.lastToken] : [])));
  const named = namedAt(own);
  const isName = ({ firstToken, lastToken }: Place): boolean => (named.get(firstToken) ?? -1) >= lastToken;
  const noun = (what: 'thing' | 'part', hit: Hit): Noun => ({
    what,
    firstToken: hit.firstToken,
    lastToken: hit.lastToken,
    isName: isName(hit),
    plural: /(?:[^s]s|n)$/.test(part.tokens[hit.lastToken]!.folded) && !singular.has(hit.lastToken),
  });
  return [
    ...ofKind(hits, 'thing').map((hit) => noun('thing', hit)),
    ...ofKind(hits, 'part')
      .filter((hit) => !isHeld(hit))
      .map((hit) => noun('part', hit)),
    ...own.map(({ firstToken, lastToken }): Noun => {
      return { what: 'name', firstToken, lastToken, plural: false, isName: true };
    }),
  ].sort((a, b) => a.firstToken - b.firstToken);
}

function isAsPacksWrite({ name, quote }: NameClaim): boolean {
  return fold(name).text.endsWith(fold(quote).text.slice(-SHORTEST_END));
}

const SHORTEST_END = 2;

interface Place {
  firstToken: number;
  lastToken: number;
}

/** Token -> the last token of the names in which it stands. */
function namedAt(names: readonly Place[]): Map<number, number> {
  const ends = new Map<number, number>();
  for (const { firstToken, lastToken } of names)
    for (let i = firstToken; i <= lastToken; i++) ends.set(i, Math.max(lastToken, ends.get(i) ?? -1));
  return ends;
}

function tokensOf(part: TextPart, { start, end }: { start: number; end: number }): Place {
  const firstToken = tokenAt(part, start);
  let lastToken = firstToken;
  while (lastToken + 1 < part.tokens.length && part.tokens[lastToken + 1]!.start < end) lastToken++;
  return { firstToken, lastToken };
}
