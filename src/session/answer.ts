import { caseOf, report } from '../audit/audit';
import { type NumberPlace, numberPlace } from '../audit/number-place';
import type { Audit } from '../audit/types';
import { type Described, listingByHand } from '../listing/by-hand';
import { readDraft } from '../listing/draft';
import type { Lapsed } from '../listing/picks';
import type { Draft, Listing } from '../listing/types';
import { DamagedError } from '../pack/compiled/pages';
import type { Knowledge } from '../pack/knowledge';
import type { Rate } from '../pack/schema/prices';
import type { Observation } from '../price/observation';
import { type KindNote, kindNote } from './kind-note';
import { type Pictures, picturesOf } from './pictures';
import { NOTHING_SEEN, type Seen } from './seen';
import { type SeenWords, seenWords, usableSeen } from './seen-words';
import type { Words } from './words';
import { NONE_SHIPPED, type Shipped, wordsOf } from './words-of';

/** What came of one listing: an audit with its words, or a mistake of ours. */
export type Answer = Answered | { ok: false; problem: string };

export interface Answered {
  ok: true;
  listing: Listing;
  audit: Audit;
  words: Words;
  /** What the audit has been told that was seen. */
  seen: SeenWords[];
  /** What is known of the kind that it most likely is, or null. */
  kind: KindNote | null;
  /** What packs have to look at of the candidates. */
  pictures: Pictures;
  /** Where its number stands among its neighbours, or null. */
  place: NumberPlace | null;
  /** What the user has said of how the page is to be read and what no longer counts; left out where no page was read. */
  lapsed?: readonly Lapsed[];
}

/** What the user has kept of prices. */
export interface OwnPrices {
  observations: readonly Observation[];
  /** Exchange rates that were typed in. */
  rates: readonly Rate[];
}

export const NO_PRICES: OwnPrices = { observations: [], rates: [] };

/**
 * Holds a seller's own draft against what the packs know. Never throws: a mistake in the engine is an answer too, so
 * that a page can say so.
 * @param asOf the day of the audit, ISO 8601
 * @param seen what the viewer has seen of it
 * @param shipped ids of the packs that came with the program
 * @param own prices and rates that the user has kept
 */
export function answerToDraft(
  draft: Draft,
  asOf: string,
  knowledge: Knowledge,
  seen: Seen = NOTHING_SEEN,
  shipped: Shipped = NONE_SHIPPED,
  own: OwnPrices = NO_PRICES,
): Answer {
  return answered(() => readDraft(draft), asOf, knowledge, seen, shipped, own);
}

/** The same for a machine that somebody has before them. */
export function answerByHand(
  described: Described,
  asOf: string,
  knowledge: Knowledge,
  seen: Seen,
  shipped: Shipped = NONE_SHIPPED,
  own: OwnPrices = NO_PRICES,
): Answer {
  return answered(() => listingByHand(described), asOf, knowledge, seen, shipped, own);
}

/** The same for whatever listing is read. */
export function answered(
  read: () => Listing,
  asOf: string,
  knowledge: Knowledge,
  seen: Seen,
  shipped: Shipped,
  { observations, rates }: OwnPrices,
): Answer {
  try {
    const listing = read();
    const auditCase = caseOf(listing, knowledge, { asOf, answers: usableSeen(seen, knowledge), observations, rates });
    const result = report(auditCase);
    const kind = kindNote(result.likely[0], result.findings, knowledge);
    const place = numberPlace(auditCase);
    const words = wordsOf(result, kind, place, knowledge, shipped);
    return {
      ok: true,
      listing,
      audit: result,
      words,
      seen: seenWords(seen, knowledge),
      kind,
      pictures: picturesOf(result.likely, knowledge),
      place,
    };
  } catch (error) {
    // No fault of the question: it is asked again once the packs are mended.
    if (error instanceof DamagedError) throw error;
    return { ok: false, problem: error instanceof Error ? (error.stack ?? error.message) : String(error) };
  }
}
