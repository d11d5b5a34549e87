import { collect } from './collect';
import { settle } from './settle';
import type { Listing } from './types';

/**
 * What the advert on a page says. `url`: its address where the document does not know it; `asOf`: the day of reading, ISO
 * 8601, without which "yesterday" is no date. Never throws.
 */
export function readListing(document: Document, url?: string | null, asOf: string | null = null): Listing {
  const harvest = collect(document, url ? { url } : {});
  return settle(harvest, url ?? (/^about:/.test(harvest.url) ? null : harvest.url || null), asOf);
}
