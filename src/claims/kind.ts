import type { Listing } from '../listing/types';
import { headOf } from './head-noun';
import type { Hit } from './hits';
import { cuesIn } from './kind-cues';
import { clauseAt, type TextPart } from './part-text';
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
    if (head === 'lot') return 'lot';
    if (head === 'part') return 'part';
    if (head === 'item') return asksFirst(description) ? 'wanted' : 'item';
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
