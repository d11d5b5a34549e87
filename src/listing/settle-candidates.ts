import { settleKind } from './decide/kinds';
import { settleDate } from './decide/listed-date';
import { settlePhotos } from './decide/photos';
import { saleIn, sellerIn } from './decide/sale-words';
import { type Found, foundIn, type OfPage, settleWritten } from './settle-written';
import type { Candidate, Listing } from './types';

/**
 * What an advert on a page says, from what was found of each field there. `asOf`: the day of reading, ISO 8601, which
 * "3 days ago" is counted from, or null.
 */
export function settleCandidates(candidates: readonly Candidate[], page: OfPage, asOf: string | null = null): Listing {
  const of = foundIn(candidates);
  const listing = settleWritten(of, page);
  return page.offers === 1 ? onlyOnPages(listing, of, asOf) : listing;
}

/** When an advert was placed, whether it is sold, who sells, which photographs are its own. */
function onlyOnPages(listing: Listing, of: Found, asOf: string | null): Listing {
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
  const photos = settlePhotos(of('photo'));
  if (photos) {
    listing.photos = photos.values;
    listing.fields.photo = photos.note;
  }
  return listing;
}
