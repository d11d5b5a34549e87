import type { Hit } from '../hits';
import { type ClauseRange, clauseIndexAt, type TextPart } from '../part-text';
import type { Known } from './clause-words';
import { french, german, type LooseWords } from './loose-words';
import { english } from './words-en';

/** What tells of a language's sentences whether they tell a tale or say what the thing is. On folded words. */
interface Ways {
  isPerson: (folded: string) => boolean;
  isOwn: (folded: string) => boolean;
  past: RegExp;
  not: RegExp;
  /** They open a clause that says what the thing has or does. */
  verbs: RegExp;
  is: RegExp;
  indefinite: RegExp;
  definite: RegExp;
  /** What follows says what the feature is good for: nothing against it. */
  therefore: RegExp;
}

const loose = ({ persons, own, not }: LooseWords, rest: Omit<Ways, 'isPerson' | 'isOwn' | 'not'>): Ways => ({
  isPerson: (folded) => persons.has(folded) && !/^(?:man|on|nous|wir)$/.test(folded),
  isOwn: (folded) => own.has(folded),
  not,
  ...rest,
});

/** Common practice, no source. */
const WAYS: Record<'en' | 'de' | 'fr', Ways> = {
  en: {
    isPerson: (folded) => (english.classOf(folded) === 'person' && !/^(?:you|we|those|they)$/.test(folded)) || /^(?:my|his|her|he|she|they|nobody)$/.test(folded),
    isOwn: (folded) => english.classOf(folded) === 'own' || /^(?:it|it's|its|she|she's|this|here's)$/.test(folded),
    past: /^(?:was|were|had|did|didn't|wasn't|went|came|told|called|wanted|bought|gave|took|thought|used|made)$/,
    not: /^(?:not|never|nor|neither|\w+n't)$/,
    verbs: /^(?:has|have|having|takes|taking|uses|using|sews|does|comes|runs|made|features|includes|with)$/,
    is: /^(?:is|are|isn't|can|will|a|an)$/,
    indefinite: /^an?$/,
    definite: /^the$/,
    therefore: /^(?:so|which|as|because|and|for|therefore)$/,
  },
  de: loose(german, {
    past: /^(?:war|waren|hatten?|kam|ging|wollten?|wurden?|braucht?en?|brauchte|hiess|meinte|sagte|versprach)$/,
    verbs: /^(?:hat|naht|nimmt|lauft|kann|mit|aus|ist|besitzt|verfugt)$/,
    is: /^(?:ist|sind)$/,
    indefinite: /^ein(?:e[nmrs]?)?$/,
    definite: /^d(?:er|ie|as|en|em)$/,
    therefore: /^(?:damit|sodass|daher|deshalb|weil|und|so|zum)$/,
  }),
  fr: loose(french, {
    past: /^(?:etait|etaient|avait|avaient|voulait|disait|fut|promettait|fallait|aurait)$/,
    verbs: /^(?:a|fait|possede|prend|coud|avec|est|en|dispose|fonctionne)$/,
    is: /^(?:est|sont)$/,
    indefinite: /^une?$/,
    definite: /^(?:les?|la|l')$/,
    therefore: /^(?:donc|pour|car|qui|et)$/,
  }),
};

/**
 * A phrase can stand in a sentence that speaks of people, of what was, or of something that is not the thing, without
 * any one word of it that would settle whose it is. Such signs add up; where they outweigh those that the sentence says
 * what the thing is, the words are read but prove nothing against it.
 * @returns whether the phrase is only told in passing
 */
export function isAside(
  part: TextPart,
  clause: ClauseRange,
  hit: Hit,
  { classes }: Known,
  language: 'en' | 'de' | 'fr',
): boolean {
  const ways = WAYS[language];
  const words = (from: number, to: number): string[] =>
    part.tokens.slice(from, to).flatMap(({ kind, folded }) => (kind === 'mark' || kind === 'break' ? [] : [folded]));
  const at = clauseIndexAt(part, clause.first);
  let opening = at;
  while (part.clauses[opening - 1]?.sentence === clause.sentence && at - opening < NEIGHBOURS) opening--;
  const earlier = words(part.clauses[opening]!.first, clause.first);
  const before = words(clause.first, hit.firstToken);
  const all = words(hit.lastToken + 1, clause.last + 1);
  const good = all.findIndex((word) => ways.therefore.test(word));
  const after = good < 0 ? all : all.slice(0, good);
  const isThings = (token: number): boolean => {
    const is = classes.get(token);
    return is === 'own' || is === 'feature' || is === 'part';
  };
  const own = [...before, ...after].some(ways.isOwn);
  const here = [...before, ...after];
  const last = part.tokens[part.clauses.findLast(({ sentence }) => sentence === clause.sentence)!.last];
  const isAsked = last?.folded === '?';
  const isPast = here.some((word) => ways.past.test(word));
  if (isOfItself(part, clause, hit, isThings, ways)) return isAsked;
  let signs = 0;
  const sign = (weight: number, holds: boolean): void => {
    if (holds) signs += weight;
  };
  sign(4, isAsked);
  sign(4, here.some(ways.isPerson) && !here.some((word) => english.classOf(word) === 'uses'));
  sign(4, isPast);
  sign(3, ways.indefinite.test(before.at(-1) ?? ''));
  sign(2, earlier.some(ways.isPerson));
  sign(2, earlier.some((word) => ways.past.test(word)));
  sign(2, [...earlier, ...here].some((word) => ways.not.test(word)));
  sign(2, earlier.length + before.length > LONG);
  sign(1, before.length > 2);
  sign(1, ways.definite.test(before.at(-1) ?? ''));
  sign(-2, own);
  return signs >= ENOUGH;
}

/** "It is …", "the body is …", "has …", "its …", "the Name has …": the thing's own, whoever else the sentence speaks of. */
function isOfItself(
  part: TextPart,
  clause: ClauseRange,
  hit: Hit,
  isThings: (token: number) => boolean,
  ways: Ways,
): boolean {
  let isFirst = true;
  for (let i = clause.first; i < hit.firstToken; i++) {
    const { kind, folded } = part.tokens[i]!;
    if (kind === 'mark') continue;
    const isOwn = ways.isOwn(folded) || isThings(i);
    if (isFirst && (isOwn || ways.verbs.test(folded))) return true;
    const next = part.tokens[i + 1];
    if (isOwn && (i + 1 === hit.firstToken || (next && (ways.verbs.test(next.folded) || ways.is.test(next.folded))))) return true;
    isFirst &&= ways.definite.test(folded);
  }
  return false;
}

const NEIGHBOURS = 6;
/** Words before a phrase in its sentence: lists have few. */
const LONG = 10;
const ENOUGH = 3;
