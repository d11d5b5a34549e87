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
}

/** A machine described by hand as a listing, so that the same audit answers. No price, no page, no photos. */
export function listingByHand({ what, serial, text }: Described): Listing {
  return { ...readDraft({ title: what, description: text, serialText: serial }), byHand: true };
}
