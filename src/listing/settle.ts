import { candidatesIn } from './candidates';
import { emptyListing, settleCandidates } from './settle-candidates';
import type { Harvest, Listing } from './types';

/**
 * What an advert says, from what a visit of its page found. Pure. Each field is decided by stated reasons; what lost is
 * kept as an alternative. On a page of many adverts there is no description, on a page without one nothing at all.
 * `url` overrides the harvest's own. Never throws.
 */
export function settle(harvest: Harvest, url: string | null = harvest.url || null): Listing {
  try {
    return judge(harvest, url);
  } catch {
    return emptyListing(url);
  }
}

/** The same without a net: throws where a harvest is none, or where this reader is wrong. */
export function judge(harvest: Harvest, url: string | null): Listing {
  const { candidates, offers, language } = candidatesIn(harvest);
  return settleCandidates(candidates, { url, offers, language });
}
