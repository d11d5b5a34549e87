import type { FieldName, Listing } from './types';

/** Fields of which a user may say how the page is to be read. */
export const PICKABLE = ['title', 'price', 'condition', 'description'] as const satisfies readonly FieldName[];
export type Pickable = (typeof PICKABLE)[number];

/** What a user says of one field. */
export type Pick =
  /** One of the page's own readings, as `readAs` has it. */
  | { how: 'picked'; value: string }
  /** A price in their own words, said while the page's own reading was `was`; "" where it had none. */
  | { how: 'typed'; value: string; was: string };

export type Picks = Partial<Record<Pickable, Pick>>;

/**
 * What a user has said of a field and what no longer counts: the page has none of these readings any more ("gone",
 * "changed" for a typed one), or what was typed is no price.
 */
export interface Lapsed {
  field: Pickable;
  value: string;
  why: 'gone' | 'changed' | 'unreadable';
}

/** Readings are told apart by so many UTF-16 units of their beginnings; alternatives are told no longer. */
const TOLD_APART = 500;

/** How a field of a listing reads, as readings are told apart; "" where it has none. */
export function readAs(listing: Listing, field: Pickable): string {
  return beginningOf((field === 'price' ? listing.priceText : listing[field]) ?? '');
}

export const beginningOf = (value: string): string => value.slice(0, TOLD_APART);
