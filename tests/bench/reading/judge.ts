import type { Listing } from '../../../src/listing/types';
import type { ExpectedListing } from './stored-pages';

export const FIELDS = [
  'title',
  'price',
  'description',
  'condition',
  'place',
  'listedDate',
  'serials',
  'photos',
  'offers',
] as const;
export type Field = (typeof FIELDS)[number];

/** From this confidence on a wrong price is one that a reader would have relied on. */
export const HIGH_CONFIDENCE = 0.8;
const F1_LEAST = 0.8;

/** Words and numbers, without case, accents and marks: what two writings of one text share. */
const tokens = (text: string): string[] =>
  text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .match(/[\p{L}\p{N}]+/gu) ?? [];

const bare = (text: string | null | undefined): string => tokens(text ?? '').join(' ');

/** Token F1: the harmonic mean of how much of the one is in the other, each token counted as often as it stands there. */
export function tokenF1(read: string, wanted: string): number {
  const left = new Map<string, number>();
  const asked = tokens(wanted);
  for (const token of asked) left.set(token, (left.get(token) ?? 0) + 1);
  const said = tokens(read);
  let shared = 0;
  for (const token of said) {
    const count = left.get(token) ?? 0;
    if (count > 0) shared++;
    left.set(token, count - 1);
  }
  if (asked.length + said.length === 0) return 1;
  return (2 * shared) / (asked.length + said.length);
}

/** For each field that the page's expected result speaks of: is it read right? */
export function judged(listing: Listing, expected: ExpectedListing): Partial<Record<Field, boolean>> {
  const right: Partial<Record<Field, boolean>> = {};
  const has = (field: string) => Object.hasOwn(expected, field);
  for (const field of ['title', 'condition', 'place'] as const)
    if (has(field)) right[field] = bare(listing[field]) === bare(expected[field]);
  if (has('description')) right.description = tokenF1(listing.description, expected.description ?? '') >= F1_LEAST;
  if (has('price')) right.price = samePrice(listing.price, expected.price ?? null);
  if (has('listedDate')) right.listedDate = listing.listedDate === expected.listedDate;
  if (has('serials'))
    right.serials = listing.serials.map(bare).sort().join('|') === (expected.serials ?? []).map(bare).sort().join('|');
  if (has('photosCount')) right.photos = listing.photos.length === expected.photosCount;
  if (has('offers')) right.offers = listing.offers === expected.offers;
  return right;
}

function samePrice(read: Listing['price'], wanted: Listing['price']): boolean {
  if (!read || !wanted) return read === wanted;
  return (
    Number(read.amount) === Number(wanted.amount) &&
    // An expected result may leave open what the page leaves open, or how the price is meant.
    (wanted.currency === undefined || read.currency === wanted.currency) &&
    (wanted.how === undefined || read.how === wanted.how)
  );
}

/** A wrong amount that is stated as sure. */
export function isSurelyWrong(listing: Listing, expected: ExpectedListing): boolean {
  if (!Object.hasOwn(expected, 'price') || samePrice(listing.price, expected.price ?? null)) return false;
  return listing.price !== null && (listing.fields.price?.confidence ?? 0) >= HIGH_CONFIDENCE;
}
