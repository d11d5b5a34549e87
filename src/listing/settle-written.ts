import { homeCurrency } from './decide/home-currency';
import { guessLanguage } from './decide/language';
import { settleDetails, settleSerials } from './decide/lists';
import { withoutPlace } from './decide/place-in-title';
import { plain } from './decide/plain';
import { settlePrice } from './decide/price';
import { settleDescription, settleTitle, settleWords } from './decide/words';
import type { Candidate, FieldName, Listing } from './types';

/** Fields that may be long; what is longer in another is no value of it. */
const LONG = new Set<FieldName>(['title', 'description', 'details', 'photo']);
const SHORT_MOST = 500;

/** A listing that says nothing. */
export const emptyListing = (url: string | null): Listing => ({
  url,
  language: null,
  title: '',
  description: '',
  details: '',
  price: null,
  priceText: '',
  serials: [],
  condition: null,
  place: null,
  listedDate: null,
  sale: null,
  seller: null,
  photos: [],
  offers: 0,
  fields: {},
});

/** What is said of a page as a whole. `countries`: those that it says it is in, or its advert; `currency`: its own. */
export type OfPage = Pick<Listing, 'url' | 'offers' | 'language'> & {
  countries?: readonly string[];
  currency?: string | null;
};

/** What was found of each field, tidied. */
export type Found = (field: FieldName) => Candidate[];

/** Sorts candidates by their fields, with what pages write around words taken off. */
export function foundIn(candidates: readonly Candidate[]): Found {
  const byField = new Map<FieldName, Candidate[]>();
  for (const candidate of candidates) {
    const most = LONG.has(candidate.field) ? candidate.value.length : SHORT_MOST;
    const value = plain(candidate.value.slice(0, most), candidate.source !== 'page' && candidate.source !== 'draft');
    if (value === '') continue;
    const its = byField.get(candidate.field);
    if (its) its.push({ ...candidate, value });
    else byField.set(candidate.field, [{ ...candidate, value }]);
  }
  return (field) => byField.get(field) ?? [];
}

/**
 * What an advert says in words that somebody wrote for it, whether on a page or in a draft. Each field is decided by
 * stated reasons; what lost is kept as an alternative. What only pages say is settled beside it.
 */
export function settleWritten(of: Found, page: OfPage): Listing {
  const listing: Listing = { ...emptyListing(page.url), offers: page.offers, language: page.language };
  if (page.offers === 0) return listing;

  const title = settleTitle(of('title'));
  if (title) {
    listing.title = title.text;
    listing.fields.title = title.note;
  }
  if (page.offers > 1) return listing;

  const description = settleDescription(of('description'), listing.title);
  if (description) {
    listing.description = description.text;
    listing.fields.description = description.note;
  }
  listing.language ??= guessLanguage(`${listing.title}\n${listing.description}`);

  const home = homeCurrency(listing.language, page.url, page.countries, page.currency);
  const price = settlePrice(of('price'), listing.language, home);
  if (price) {
    listing.price = price.price;
    listing.priceText = price.text;
    listing.fields.price = price.note;
  }
  for (const field of ['condition', 'place'] as const) {
    const words = settleWords(of(field), field);
    if (!words) continue;
    listing[field] = words.text;
    listing.fields[field] = words.note;
  }
  if (listing.place) listing.title = withoutPlace(listing.title, listing.place);
  const details = settleDetails(of('details'));
  if (details) {
    listing.details = details.text;
    listing.fields.details = details.note;
  }
  const serials = settleSerials(of('serial'));
  if (serials) {
    listing.serials = serials.values;
    listing.fields.serial = serials.note;
  }
  return listing;
}
