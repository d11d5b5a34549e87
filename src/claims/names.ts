import type { Knowledge, NameKnown } from '../pack/knowledge';
import type { PhraseMatch } from '../text/phrases';
import { contains } from './hits';
import { misspeltNames } from './misspelt';
import { isAlias, isIdentified, opensWithMine } from './name-identity';
import { ofAnother } from './other-thing';
import { clauseAt, type TextPart } from './part-text';
import type { NameClaim } from './reading';
import { ShortNames } from './short-names';
import type { StanceOf, StanceReader } from './stance';
import { stancedQuote } from './stanced-quote';

type NameMatch = PhraseMatch<NameKnown> & { misspelt: boolean };

/**
 * The names of models, families and makers in one text, each with what is said of it.
 * @param named from `packsNamed`
 */
export function namesIn(
  part: TextPart,
  knowledge: Knowledge,
  stances: StanceReader,
  things: readonly { firstToken: number; lastToken: number }[],
  named: ReadonlySet<string>,
): NameClaim[] {
  const exact = knowledge.names.search(part.tokens).map(({ start, end, firstToken, lastToken, value }) => {
    return { start, end, firstToken, lastToken, value, misspelt: false };
  });
  const all: NameMatch[] = [...exact, ...misspeltNames(part, knowledge, exact, things)];
  const beginning = byFirstToken(all);
  const longest = all.reduce((most, { firstToken, lastToken }) => Math.max(most, lastToken - firstToken), 0);
  const short = new ShortNames(part, all, named);
  return all
    .filter((match) => !isHeld(match, beginning, longest))
    .filter((match) => short.isNameHere(match))
    .map((match) => {
      const isName = !('maker' in match.value.of);
      const { start, end, firstToken, lastToken, value, misspelt } = match;
      const stance = ownOf(part, match, stances.at(firstToken, lastToken, isName));
      const identity = isIdentified(match, part) && !isMineBesides(match, all, part);
      return Object.assign(stancedQuote(part, start, end, stance), {
        of: value.of,
        name: value.text,
        misspelt,
        identity,
        alias: identity && isAlias(match, part),
      });
    });
}

/** "Name, number 12345. … My Other weighs more": whoever has named what is on sale speaks of another one of his. */
function isMineBesides({ value, firstToken }: NameMatch, all: readonly NameMatch[], part: TextPart): boolean {
  const { of } = value;
  if (!('model' in of) || !opensWithMine(firstToken, part)) return false;
  return all.some(
    (one) => one.firstToken < firstToken && 'model' in one.value.of && one.value.of.model.ref !== of.model.ref,
  );
}

/**
 * Stands within a longer name? A model's name within its maker's stands by itself.
 * @param longest in tokens: a name that begins farther before another can't hold it
 */
function isHeld(match: NameMatch, beginning: ReadonlyMap<number, readonly NameMatch[]>, longest: number): boolean {
  for (let first = match.firstToken; first >= 0 && match.firstToken - first <= longest; first--)
    for (const other of beginning.get(first) ?? [])
      if (contains(other, match) && !(isModel(match) && isMaker(other))) return true;
  return isModel(match) && isCutShort(match, beginning);
}

/** "Maker Scullery Zigzag": what runs on behind the maker's name is the name, and no shorter one is. */
function isCutShort(
  { firstToken, lastToken }: NameMatch,
  beginning: ReadonlyMap<number, readonly NameMatch[]>,
): boolean {
  const maker = beginning.get(firstToken)?.find((one) => isMaker(one) && one.lastToken < lastToken);
  const behind = maker && beginning.get(maker.lastToken + 1);
  return behind?.some((one) => isModel(one) && one.lastToken > lastToken) ?? false;
}

const isMaker = (match: NameMatch): boolean => 'maker' in match.value.of;
const isModel = (match: NameMatch): boolean => 'model' in match.value.of;

function byFirstToken(all: readonly NameMatch[]): ReadonlyMap<number, readonly NameMatch[]> {
  const beginning = new Map<number, NameMatch[]>();
  for (const match of all) {
    const there = beginning.get(match.firstToken);
    if (there) there.push(match);
    else beginning.set(match.firstToken, [match]);
  }
  return beginning;
}

const HOLDER =
  /^(?:cabinet|case|table|lid|box|tin|treadle|irons|base|stand|suitcase|gestell|untergestell|schrank|koffer|tisch|meuble|valise|coffret)$/;

/** "In a Name cabinet": the cabinet's name. */
function isInside({ tokens }: TextPart, name: number): boolean {
  const [before, article] = tokens.slice(Math.max(0, name - 2), name);
  return [before, article].some((one) => /^(?:in|on|with|im|auf|mit|dans|sur|avec)$/.test(one?.folded ?? ''));
}

/** "For sale my mother's Name", "selling my gran's Name": what was hers is on sale. */
function isOnOffer(part: TextPart, name: number): boolean {
  const clause = clauseAt(part, name);
  if (!clause || name - clause.first > MOST_OF_AN_OFFER) return false;
  const words = part.tokens.slice(clause.first, name).flatMap(({ kind, folded }) => (kind === 'mark' ? [] : [folded]));
  return /^(?:for sale|selling|offering|up for sale) (?:is )?(?:my|our|the|a)\b/.test(words.join(' '));
}

const MOST_OF_AN_OFFER = 7;

/** "He had a Name as well": another one than that of which it is told. */
function isBesides({ tokens }: TextPart, { firstToken, lastToken }: NameMatch): boolean {
  const [first, second] = tokens.slice(lastToken + 1, lastToken + 3).map(({ folded }) => folded);
  const besides = first === 'too' || (first === 'as' && second === 'well');
  return besides && /^(?:an?|the|another)$/.test(tokens[firstToken - 1]?.folded ?? '');
}

/** "The cams came off my old Name." */
const OFF_MINE =
  /\b(?:off|from|than) (?:my|our|his|her|the|an?) (?:old|other|previous|first|last|dead|scrapped|broken)$/i;

/** "My daughter's Name", "a Name one is too long": somebody else's, or another of its kind. */
function ownOf(part: TextPart, match: NameMatch, stance: StanceOf): StanceOf {
  const before = part.tokens[match.firstToken - 1];
  const after = part.tokens[match.lastToken + 1];
  // A title's "my mother's Name" is what is on sale.
  const theirs =
    part.field !== 'title' &&
    !isOnOffer(part, match.firstToken) &&
    before?.kind === 'word' &&
    before.folded.endsWith("'s") &&
    /^\p{Ll}.*'s$/u.test(part.text.slice(before.start, before.end).replace('’', "'"));
  const next = part.tokens[match.lastToken + 2];
  // "Name one of 12".
  const another = (after?.folded === 'one' && next?.folded !== 'of') || after?.folded === 'ones';
  const alsoHad = part.field === 'description' && isBesides(part, match);
  const offMine = part.field !== 'title' && before !== undefined && OFF_MINE.test(part.text.slice(0, before.end));
  const holder = HOLDER.test(after?.folded ?? '') && isInside(part, match.firstToken);
  if (!theirs && !another && !holder && !alsoHad && !offMine) return stance;
  const { start, end } = (theirs || offMine ? before : after)!;
  return ofAnother(stance, 'owner', part.text.slice(start, end));
}
