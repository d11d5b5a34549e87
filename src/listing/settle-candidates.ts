import { homeCurrency } from './decide/home-currency';
import { settleKind } from './decide/kinds';
import { guessLanguage } from './decide/language';
import { settleDate, settleDetails, settleSerials } from './decide/lists';
import { settlePhotos } from './decide/photos';
import { withoutPlace } from './decide/place-in-title';
import { plain } from './decide/plain';
import { settlePrice } from './decide/price';
import { saleIn, sellerIn } from './decide/sale-words';
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

/**
 * What an advert says, from what was found of each field. Each is decided by stated reasons; what lost is kept as an
 * alternative. Pages and drafts alike: drafts need nothing of how pages are read. `asOf`: the day of reading, ISO 8601.
 */
export function settleCandidates(
  candidates: Candidate[],
  page: Pick<Listing, 'url' | 'offers' | 'language'>,
  asOf: string | null = null,
): Listing {
  const listing: Listing = { ...emptyListing(page.url), offers: page.offers, language: page.language };
  if (page.offers === 0) return listing;
  const byField = new Map<FieldName, Candidate[]>();
  for (const candidate of candidates) {
    const most = LONG.has(candidate.field) ? candidate.value.length : SHORT_MOST;
    const value = plain(candidate.value.slice(0, most), candidate.source !== 'page' && candidate.source !== 'draft');
    if (value === '') continue;
    const its = byField.get(candidate.field);
    if (its) its.push({ ...candidate, value });
    else byField.set(candidate.field, [{ ...candidate, value }]);
  }
  const of = (field: FieldName) => byField.get(field) ?? [];

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

  const price = settlePrice(of('price'), listing.language, homeCurrency(listing.language, page.url));
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
  const date = settleDate(of('listedDate'), listing.language, asOf);
  if (date) {
    listing.listedDate = date.text;
    listing.fields.listedDate = date.note;
  }
  const sale = settleKind(of('sale'), saleIn);
  if (sale) {
    listing.sale = sale.kind;
    listing.fields.sale = sale.note;
  }
  const seller = settleKind(of('seller'), sellerIn);
  if (seller) {
    listing.seller = seller.kind;
    listing.fields.seller = seller.note;
  }
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
  const photos = settlePhotos(of('photo'));
  if (photos) {
    listing.photos = photos.values;
    listing.fields.photo = photos.note;
  }
  return listing;
}
