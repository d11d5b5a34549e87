import { audit } from '../audit/audit';
import type { Audit } from '../audit/types';
import { readDraft } from '../listing/draft';
import { settle } from '../listing/settle';
import type { Draft, Harvest, Listing } from '../listing/types';
import type { Knowledge } from '../pack/knowledge';
import type { Words } from './words';
import { wordsOf } from './words-of';

/** What came of one harvest: an audit with its words, or a mistake of ours. */
export type Answer = { ok: true; listing: Listing; audit: Audit; words: Words } | { ok: false; problem: string };

/**
 * Settles what a page said and holds it against what the packs know. Never throws: a mistake in the engine is an
 * answer too, so that the panel can say so.
 * @param asOf the day of the audit, ISO 8601
 */
export function answerTo(harvest: Harvest, asOf: string, knowledge: Knowledge): Answer {
  return answered(() => settle(harvest, harvest.url), asOf, knowledge);
}

/** The same for a seller's own draft. */
export function answerToDraft(draft: Draft, asOf: string, knowledge: Knowledge): Answer {
  return answered(() => readDraft(draft), asOf, knowledge);
}

function answered(read: () => Listing, asOf: string, knowledge: Knowledge): Answer {
  try {
    const listing = read();
    const result = audit(listing, knowledge, { asOf });
    return { ok: true, listing, audit: result, words: wordsOf(result, knowledge) };
  } catch (error) {
    return { ok: false, problem: error instanceof Error ? (error.stack ?? error.message) : String(error) };
  }
}
