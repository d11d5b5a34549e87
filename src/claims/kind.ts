import type { Listing } from '../listing/types';
import { findSerialShapes } from '../quantity/serials';
import { headOf } from './head-noun';
import type { Hit } from './hits';
import { cuesIn } from './kind-cues';
import { clauseAt, type TextPart, tokenAt } from './part-text';
import type { NameClaim } from './reading';
import type { Kind } from './types';

/** A page with so many separate offers and no seller's text of its own is a list of adverts. */
const OFFERS_OF_A_LIST = 2;

export interface KindInput {
  listing: Listing;
  title: TextPart | null;
  description: TextPart | null;
  /** Phrases of packs in title and description. */
  hits: ReadonlyMap<TextPart, readonly Hit[]>;
  names: readonly NameClaim[];
}

/** What is on offer: the thing itself, a part, a wish, several things, a service; or a page of many adverts, or none. */
export function kindOf({ listing, title, description, hits, names }: KindInput): Kind {
  if (!listing.title && !listing.description && !listing.price) return 'none';
  if (listing.offers >= OFFERS_OF_A_LIST && !listing.description) return 'list';
  if (title) {
    const found = cuesIn(title);
    const first = title.tokens.findIndex((token) => token.kind !== 'mark');
    const opens = found.some((cue) => cue.value === 'wanted' && cue.firstToken <= first + 1);
    const closes = found.some(
      (cue) =>
        cue.value === 'wanted' &&
        cue.lastToken >= title.tokens.length - 2 &&
        /^(wanted|gesucht|suche)/.test(title.tokens[cue.firstToken]!.folded),
    );
    const asks = found.some((cue) => cue.value === 'asking');
    if (opens || closes || asks) return 'wanted';
    const service = found.some(
      ({ value, firstToken }) => value === 'service' || (value === 'service-first' && firstToken <= first),
    );
    if (service || offersWork(description, listing)) return 'service';
    const head = headOf(title, hits.get(title) ?? [], names, found);
    if (head === 'lot' || countsNames(description, names)) return 'lot';
    if (head === 'part' && !isDescribed(title, description, hits, names)) return 'part';
    if (head !== 'part' && offersParts(description, hits, names)) return 'part';
    if (head !== null) return asksFirst(description) ? 'wanted' : 'item';
  }
  if (asksFirst(description)) return 'wanted';
  if (description && !title) {
    const found = cuesIn(description);
    const head = headOf(description, hits.get(description) ?? [], names, found);
    if (head) return head;
  }
  return 'item';
}

/** "I repair …" in the first sentence, and no price of a thing. */
function offersWork(description: TextPart | null, { price, priceText }: Listing): boolean {
  const first = description?.clauses[0];
  if (
    !description ||
    !first ||
    (price !== null && price.how !== 'from' && !/call|flat|per |hour|visit|stunde|heure/i.test(priceText))
  )
    return false;
  return cuesIn(description).some(
    (cue) => cue.value === 'works' && clauseAt(description, cue.firstToken)?.sentence === first.sentence,
  );
}

/** The first sentence says "I am looking for". */
function asksFirst(description: TextPart | null): boolean {
  const first = description?.clauses[0];
  if (!description || !first) return false;
  return cuesIn(description).some(
    (cue) =>
      (cue.value === 'asks' && clauseAt(description, cue.firstToken)?.sentence === first.sentence) ||
      (cue.value === 'wanted' &&
        cue.firstToken <= first.first + 1 &&
        description.tokens[cue.firstToken]!.folded === 'wanted'),
  );
}

/** The first sentence sells what is for a machine: "Motor, belt and pedal from a Name". */
function offersParts(description: TextPart | null, hits: KindInput['hits'], names: readonly NameClaim[]): boolean {
  const opening = description && firstSentence(description);
  if (!description || !opening) return false;
  const fitting = cuesIn(description).filter(({ value }) => value === 'fitting');
  const first = names
    .filter(({ field, end }) => field === description.field && end <= opening.end)
    .sort((a, b) => a.start - b.start)[0];
  const isFitted = fitting.some(
    (cue) => first && cue.end < first.start && first.start - cue.end <= SMALL_WORDS && cue.start > opening.start,
  );
  if (!first || !isFitted) return false;
  const before = (hits.get(description) ?? []).filter((hit) => hit.end <= first.start);
  const isThing = before.some(({ value, start }) => value.kind === 'thing' && start >= opening.start);
  return before.some(({ value }) => value.kind === 'part') && !isThing;
}

/** " a ", " the old ": as long as may stand between "from" and a name. */
const SMALL_WORDS = 8;
const NUMBERS_OF_THINGS = /^(?:two|three|four|five|zwei|drei|vier|deux|trois|quatre)$/;

/** "Two Names", "zwei Name": the first sentence counts them. */
function countsNames(description: TextPart | null, names: readonly NameClaim[]): boolean {
  const opening = description && firstSentence(description);
  if (!description || !opening) return false;
  return names.some(({ field, start, end, of, stance }) => {
    if (field !== description.field || end > opening.end || !('model' in of) || stance !== 'says') return false;
    const at = tokenAt(description, start);
    return [at - 1, at - 2].some((i) => i >= 0 && NUMBERS_OF_THINGS.test(description.tokens[i]!.folded));
  });
}

/** "Name treadle cabinet": the head is a part's, but the text goes on about the machine: by name, or with its number. */
function isDescribed(
  title: TextPart,
  description: TextPart | null,
  hits: KindInput['hits'],
  names: readonly NameClaim[],
): boolean {
  const part = (hits.get(title) ?? []).find(({ value }) => value.kind === 'part');
  const opens = names.some(
    ({ field, start }) => field === 'title' && start <= OPENS_WITHIN && (!part || start < part.start),
  );
  if (!description || !opens || offersParts(description, hits, names)) return false;
  const isNumbered = findSerialShapes(description.text).some(({ normal }) => /[A-Z]/.test(normal));
  const head = headOf(description, hits.get(description) ?? [], names, cuesIn(description));
  return head === 'item' || (isNumbered && head !== 'lot');
}

const OPENS_WITHIN = 12;

function firstSentence(part: TextPart): { start: number; end: number } | null {
  const first = part.clauses[0];
  if (!first) return null;
  const last = part.clauses.findLast(({ sentence }) => sentence === first.sentence)!;
  return { start: first.start, end: last.end };
}
