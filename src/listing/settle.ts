import { candidatesIn } from './candidates';
import { settleCandidates } from './settle-candidates';
import { emptyListing } from './settle-written';
import type { Harvest, Listing } from './types';

/**
 * What an advert says, from what a visit of its page found. Pure. Each field is decided by stated reasons; what lost is
 * kept as an alternative. On a page of many adverts there is no description, on a page without one nothing at all.
 * `url` overrides the harvest's own; `asOf` is the day of reading (ISO 8601), which "3 days ago" is counted from, or null.
 * Never throws.
 */
export function settle(
  harvest: Harvest,
  url: string | null = harvest.url || null,
  asOf: string | null = null,
): Listing {
  try {
    return judge(harvest, url, asOf);
  } catch {
    return emptyListing(url);
  }
}

/** The same without a net: throws where a harvest is none, or where this reader is wrong. */
export function judge(harvest: Harvest, url: string | null, asOf: string | null = null): Listing {
  const { candidates, ...page } = candidatesIn(harvest);
  return settleCandidates(candidates, { url, ...page }, asOf);
}
