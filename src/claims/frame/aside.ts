import { type ClauseRange, clauseIndexAt, FARTHEST, hasNameCapital, openingAt, type TextPart } from '../part-text';
import { type FramedLanguage, MAKING, WAYS, type Ways } from './aside-words';
import type { Known } from './clause-words';
import type { WordClass } from './types';
import { english } from './words-en';

/** A phrase's tokens. */
interface Place {
  firstToken: number;
  lastToken: number;
}

/** The words of a sentence around a phrase in it, folded. */
interface Around {
  /** In the clauses before the phrase's own. */
  earlier: readonly string[];
  /** In its own clause, before and behind; what a feature is good for is left out. */
  before: readonly string[];
  after: readonly string[];
  whole: readonly string[];
  isAsked: boolean;
}

/**
 * A phrase can stand in a sentence that speaks of people, of what was, or of something that is not the thing, without
 * any one word of it that would settle whose it is. Such signs add up; where they outweigh those that the sentence says
 * what the thing is, the words are read but prove nothing against it.
 * @returns whether the phrase is only told in passing
 */
export function isAside(
  part: TextPart,
  clause: ClauseRange,
  hit: Place,
  { classes }: Known,
  language: FramedLanguage,
  of: 'feature' | 'making' = 'feature',
): boolean {
  const ways = of === 'making' ? MAKING[language] : WAYS[language];
  const around = wordsAround(part, clause, hit, ways);
  const isAmong = around.earlier.some((word) => ways.isPerson(word) && !SELF.test(word));
  const own = { hit, classes, ways, isAmong, hasNames: language !== 'de' };
  if (of === 'making' && around.before.some((word) => SELLS.test(word))) return false;
  // "The overlocker is sold, the free arm too."
  const isToo = TOO.test(around.after.at(-1) ?? '') && around.earlier.some((word) => GONE.test(word));
  if (isOfItself(part, clause, own)) return around.isAsked || isToo;
  return signs(around, ways, isAmong) >= ENOUGH;
}

/** How much of a sentence says that it tells a tale. Weights by trial on labelled adverts. */
function signs({ earlier, before, after, whole, isAsked }: Around, ways: Ways, isAmong: boolean): number {
  const here = [...before, ...after];
  const isWorked = here.some((word) => english.classOf(word) === 'uses');
  const last = before.at(-1) ?? '';
  const owns = here.some((word, i) => ways.isOwn(word) && !ways.indefinite.test(here[i - 1] ?? ''));
  const all: readonly [boolean, number][] = [
    [isAsked, 4],
    [here.some(ways.isPerson) && !isWorked, 4],
    [here.some((word) => ways.past.test(word)), 4],
    [whole.some((word) => GONE.test(word)), 4],
    // "An industrial machine.": what opens a sentence so is the thing.
    [ways.indefinite.test(last) && earlier.length + before.length > 1, 3],
    [isAmong, 2],
    [earlier.some((word) => ways.past.test(word)), 2],
    [[...earlier, ...here].some((word) => ways.not.test(word)), 2],
    [earlier.length + before.length > LONG, 2],
    [before.length > 2, 1],
    [ways.definite.test(last), 1],
    [owns, -2],
  ];
  return all.reduce((sum, [holds, weight]) => (holds ? sum + weight : sum), 0);
}

function wordsAround(part: TextPart, clause: ClauseRange, hit: Place, ways: Ways): Around {
  const words = (from: number, to: number): string[] => {
    const found: string[] = [];
    for (let i = Math.max(from, hit.firstToken - FARTHEST); i < Math.min(to, hit.lastToken + FARTHEST); i++) {
      const token = part.tokens[i];
      if (token && token.kind !== 'mark' && token.kind !== 'break') found.push(token.folded);
    }
    return found;
  };
  const at = clauseIndexAt(part, clause.first);
  let ending = at;
  while (part.clauses[ending + 1]?.sentence === clause.sentence && ending - at < NEIGHBOURS) ending++;
  const [first, last] = [part.clauses[openingAt(part, at, NEIGHBOURS)]!.first, part.clauses[ending]!.last];
  const after = words(hit.lastToken + 1, clause.last + 1);
  const good = after.findIndex((word) => ways.therefore.test(word));
  return {
    earlier: words(first, clause.first),
    before: words(clause.first, hit.firstToken),
    after: good < 0 ? after : after.slice(0, good),
    whole: words(first, last + 1),
    isAsked: part.tokens[last]?.folded === '?',
  };
}

interface Own {
  hit: Place;
  classes: Known['classes'];
  ways: Ways;
  /** The sentence has spoken of somebody before. */
  isAmong: boolean;
  /** A capital tells a name. */
  hasNames: boolean;
}

/** "It is …", "the body is …", "has …", "its …", "the Name has …": the thing's own, whoever else the sentence speaks of. */
function isOfItself(part: TextPart, clause: ClauseRange, { hit, classes, ways, isAmong, hasNames }: Own): boolean {
  let isFirst = true;
  for (let i = Math.max(clause.first, hit.firstToken - FARTHEST); i < hit.firstToken; i++) {
    const { kind, folded } = part.tokens[i]!;
    if (kind === 'mark') continue;
    const isOwn = ways.isOwn(folded) || THINGS.has(classes.get(i) ?? 'plain');
    if (isFirst && (isOwn || (!isAmong && ways.verbs.test(folded)))) return true;
    // "A machine with" is another; "a Name with" needn't be.
    const isOne = ways.indefinite.test(part.tokens[i - 1]?.folded ?? '') && !(hasNames && hasNameCapital(part, i));
    if (isOwn && !isOne && saysOn(part, i, hit, ways)) return true;
    // "There is a …".
    if (isFirst && folded === 'there' && ways.is.test(part.tokens[i + 1]!.folded)) return !isAmong;
    isFirst &&= ways.definite.test(folded) || JOINS.test(folded);
  }
  return false;
}

/** What the thing is or has comes right behind: by a verb, or as "its …". */
function saysOn({ tokens }: TextPart, at: number, hit: Place, ways: Ways): boolean {
  const next = tokens[at + 1]!;
  if (at + 1 === hit.firstToken) return !/^(?:it|she|he|sie|es|elle|il)$/.test(tokens[at]!.folded);
  return ways.verbs.test(next.folded) || ways.is.test(next.folded);
}

const THINGS: ReadonlySet<WordClass> = new Set<WordClass>(['own', 'feature', 'part']);
/** What isn't on sale, or no more. */
const GONE = /^(?:sold|reserved|scrapped|spoken|verkauft|reserviert|vergeben|vendue?s?|reservee?s?)$/;
const JOINS = /^(?:and|also|plus|und|et|auch|aussi)$/;
const TOO = /^(?:too|also|auch|aussi)$/;
/** What is offered here. */
const SELLS = /^(?:selling|sell|sale|offer|offering|offered|verkaufe|verkauft|biete|abzugeben|vends|vend|vendre|cede)$/;
const SELF = /^(?:i|ich|je|j')$/;
const NEIGHBOURS = 6;
/** Words before a phrase in its sentence: lists have few. */
const LONG = 10;
const ENOUGH = 3;
