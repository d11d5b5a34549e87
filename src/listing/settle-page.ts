import { settleKind } from './decide/kinds';
import { settleDate } from './decide/listed-date';
import { settlePhotos } from './decide/photos';
import { saleIn, sellerIn } from './decide/sale-words';
import type { Found } from './settle-candidates';
import type { Listing } from './types';

/**
 * What only pages say of an advert: when it was placed, whether it is sold, who sells, which photographs are its own.
 * `asOf`: the day of reading, ISO 8601, or null.
 */
export function settlePage(listing: Listing, of: Found, asOf: string | null): Listing {
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
