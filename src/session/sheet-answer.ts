import { caseOf } from '../audit/audit';
import { sheetLanguages, type ViewingSheet, viewingSheet } from '../audit/viewing-sheet';
import type { Listing } from '../listing/types';
import type { Knowledge } from '../pack/knowledge';
import { type Answer, answered, type OwnPrices } from './answer';
import { withoutPicks } from './picks';
import type { Seen } from './seen';
import type { Shipped } from './words-of';

/** An advert's viewing sheet in each of its languages, the advert's own first, and what the audit makes of it by now. */
export interface SheetAnswer {
  sheets: ViewingSheet[];
  answer: Answer;
}

/**
 * The sheet asks the same in the same order whatever has been seen meanwhile: somebody has it on paper. What was seen
 * counts in the audit.
 */
export function answerToSheet(
  listing: Listing,
  asOf: string,
  knowledge: Knowledge,
  seen: Seen,
  shipped: Shipped,
  own: OwnPrices,
): SheetAnswer {
  const answer = answered(() => listing, asOf, knowledge, withoutPicks(seen), shipped, own);
  if (!answer.ok) return { sheets: [], answer };
  const asked = caseOf(listing, knowledge, { asOf });
  return {
    sheets: sheetLanguages(listing.language).flatMap((language) => viewingSheet(asked, language) ?? []),
    answer,
  };
}
