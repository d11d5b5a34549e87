import type { Listing } from '../listing/types';
import { findSerialShapes } from '../quantity/serials';
import type { Span } from '../text/span';
import { countsAt } from './counting';
import { headOf } from './head-noun';
import type { Hit } from './hits';
import { type CueMatch, cuesIn } from './kind-cues';
import { type ClauseRange, clauseAt, firstWordOf, type TextPart } from './part-text';
import type { NameClaim } from './reading';
import { type Named, topicsOf } from './topic';

const NOTHING_NAMED: ReadonlyMap<number, Named> = new Map();
const AND_ONE = /\b(?:one|eine?|une?) .*\b(?:and one|und eine?|et une?) $/is;
const COPULA = /^(?:is|are|was|were|ist|sind|war|waren|est|sont|etait|c'est)$/;
/** " a ", " the old ": as long as may stand between "from" and a name. */
const SMALL_WORDS = 8;

/** "I repair …" in the first sentence, and no price of a thing. */
export function offersWork(description: TextPart | null, { price, priceText }: Listing): boolean {
  const isRate = /call|flat|per |hour|visit|stunde|heure/i.test(priceText);
  if (!description || (price !== null && price.how !== 'from' && !isRate)) return false;
  return cuesIn(description).some((cue) => cue.value === 'works' && isInFirstSentence(description, cue));
}

/** The first sentence says "I am looking for". */
export function asksFirst(description: TextPart | null, names: readonly NameClaim[]): boolean {
  const first = description && firstClause(description);
  if (!description || !first) return false;
  return cuesIn(description).some(
    (cue) =>
      (cue.value === 'asks' && isInFirstSentence(description, cue)) ||
      (cue.value === 'after' && isInFirstSentence(description, cue) && isNameBehind(description, cue, names)) ||
      (cue.value === 'wanted' &&
        cue.firstToken === first.first + firstWordOf(first.tokens) &&
        description.tokens[cue.firstToken]!.folded === 'wanted'),
  );
}

/** The first sentence sells what is for a machine: "Motor, belt and pedal from a Name". */
export function offersParts(description: TextPart | null, hits: readonly Hit[], names: readonly NameClaim[]): boolean {
  const opening = description && firstSentence(description);
  if (!description || !opening) return false;
  const first = names
    .filter(({ field, start, end }) => field === description.field && start >= opening.start && end <= opening.end)
    .sort((a, b) => a.start - b.start)[0];
  if (!first) return false;
  const isFitted = cuesIn(description).some(
    ({ value, start, end }) =>
      value === 'fitting' && end < first.start && first.start - end <= SMALL_WORDS && start > opening.start,
  );
  if (!isFitted) return false;
  const before = hits.filter(({ start, end }) => start >= opening.start && end <= first.start);
  const isThing = before.some(({ value }) => value.kind === 'thing');
  // "The manual enclosed is that of a Name": told of it, not sold.
  const said = description.tokens.some(
    ({ folded, start, end }) => start >= opening.start && end <= first.start && COPULA.test(folded),
  );
  return !isThing && !said && before.some(({ value }) => value.kind === 'part');
}

/** "Two Names", "zwei Name": the first sentence counts them. */
export function countsNames(description: TextPart | null, names: readonly NameClaim[]): boolean {
  const opening = description && firstSentence(description);
  // "Two of them in the shop. This one, …".
  if (!description || !opening || /\bthis one\b/i.test(description.text)) return false;
  const said = names.filter(
    ({ field, start, end, of, stance }) =>
      field === description.field && start >= opening.start && end <= opening.end && 'model' in of && stance === 'says',
  );
  // "One Name and one Other".
  const isOneMore = said.some(({ start }) => AND_ONE.test(description.text.slice(opening.start, start)));
  return (isOneMore && said.length > 1) || said.some(({ start }) => countsAt(description, start));
}

/** The title's head is a part's, but the text goes on about the machine: by what it is, or with its number. */
export function describesThing(
  description: TextPart | null,
  hits: readonly Hit[],
  names: readonly NameClaim[],
): boolean {
  if (!description) return false;
  const cues = cuesIn(description);
  // "For the Name." says what it is for.
  const opening = firstClause(description);
  if (
    opening &&
    cues.some(
      ({ value, firstToken }) => value === 'fitting' && firstToken === opening.first + firstWordOf(opening.tokens),
    )
  )
    return false;
  const head = headOf(description, hits, names, cues);
  const isNumbered = findSerialShapes(description.text).some(({ normal }) => /[A-Z]/.test(normal));
  return head === 'item' || (isNumbered && head !== 'lot');
}

function isNameBehind(part: TextPart, { end }: CueMatch, names: readonly NameClaim[]): boolean {
  return names.some(({ field, start }) => field === part.field && start >= end && start - end <= SMALL_WORDS);
}

function isInFirstSentence(part: TextPart, { firstToken }: CueMatch): boolean {
  const first = firstClause(part);
  return first !== null && clauseAt(part, firstToken)?.sentence === first.sentence;
}

function firstSentence(part: TextPart): Span | null {
  const first = firstClause(part);
  if (!first) return null;
  const last = part.clauses.findLast(({ sentence }) => sentence === first.sentence)!;
  return { start: first.start, end: last.end };
}

const openings = new WeakMap<TextPart, ClauseRange | null>();

/** Where a text begins to speak of what is on sale: not with "My neighbour has another machine." Asked for each cue. */
function firstClause(part: TextPart): ClauseRange | null {
  const there = openings.get(part);
  if (there !== undefined) return there;
  const others = topicsOf(part, NOTHING_NAMED);
  const first = part.clauses.find(({ sentence }) => !others.has(sentence)) ?? null;
  openings.set(part, first);
  return first;
}
