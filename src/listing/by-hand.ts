import { readDraft } from './draft';
import type { Listing } from './types';

/** A machine on the table, as a person describes it. */
export interface Described {
  /** The word for the thing, one of those by which a pack shows what it covers: "sewing machine". */
  what: string;
  /** As stamped; left out or "" where there is none to read. */
  serial?: string | undefined;
  /** Anything that can be read on it or is known of it, in words. */
  text?: string | undefined;
  /** What somebody else says of it, as marked on a page: believed no more than an advert. */
  said?: string | undefined;
}

/**
 * A machine described by hand as a listing, so that the same audit answers. No price, no page, no photos. Whoever looks
 * at it and sells nothing is believed more than an advert; with an advert's words in it, it is one.
 */
export function listingByHand({ what, serial, text, said }: Described): Listing {
  if (!said) return { ...readDraft({ title: what, description: text, serialText: serial }), byHand: true };
  // Each on lines of its own, so that no sentence runs from the one into the other.
  return readDraft({ title: what, description: [text, said].filter(Boolean).join('\n\n'), serialText: serial });
}
