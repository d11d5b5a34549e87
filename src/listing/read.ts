import { collect } from './collect';
import { settle } from './settle';
import type { Listing } from './types';

/** What the advert on a page says. `url`: its address where the document does not know it. Never throws. */
export function readListing(document: Document, url?: string | null): Listing {
  const harvest = collect(document, url ? { url } : {});
  return settle(harvest, url ?? (/^about:/.test(harvest.url) ? null : harvest.url || null));
}
