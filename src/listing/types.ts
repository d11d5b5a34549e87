/** Where a value was read. Ordered by nothing: `settle` decides by stated reasons. */
export type SourceName = 'json-ld' | 'microdata' | 'meta' | 'page' | 'draft';

export type FieldName =
  | 'title'
  | 'description'
  | 'details'
  | 'price'
  | 'serial'
  | 'condition'
  | 'place'
  | 'listedDate'
  | 'photo';

/** One value found on the page for one field, as text, before anything is decided. */
export interface Candidate {
  field: FieldName;
  /** Text as a person would read it; for a price the amount as written, for a photo an absolute address. */
  value: string;
  source: SourceName;
  /** 0 to 1: how much the place where it stands speaks for it ("itemprop=price" more than "some bold number"). */
  weight: number;
  /** Prices only: the currency stated beside the amount (ISO 4217), and how the price is meant. */
  currency?: string | null;
  how?: PriceHow;
}

/** What one visit of a page found: capped, plain JSON, safe to send between contexts. */
export interface Harvest {
  schema: 1;
  url: string;
  /** The page's own language tag (html lang), lower-case, or null. */
  language: string | null;
  candidates: Candidate[];
  /** How many separate things for sale the page shows: more than a few make it a list of adverts. */
  offers: number;
  /** Something was longer than the caps and was cut. */
  cut: boolean;
}

export type PriceHow = 'asking' | 'bid' | 'sold' | 'from';

export interface Price {
  /** A decimal string with a point: "1340.00", never a float. */
  amount: string;
  /** ISO 4217, or null where a sign such as "$" can't be settled. */
  currency: string | null;
  how: PriceHow;
}

export interface FieldNote {
  source: SourceName;
  /** 0 to 1. */
  confidence: number;
  /** Values that lost, most likely first. */
  alternatives: { value: string; source: SourceName }[];
}

/** What the advert says. Offsets into its texts are UTF-16 units, end exclusive. */
export interface Listing {
  url: string | null;
  language: string | null;
  title: string;
  description: string;
  /** The page's labelled rows ("Material: cast iron"), one per line; "" where there are none. */
  details: string;
  price: Price | null;
  /** The price as it is written on the page; "" where there is none. */
  priceText: string;
  /** Serials as written, from fields of their own (those inside the description are found by the audit). */
  serials: string[];
  condition: string | null;
  place: string | null;
  /** ISO 8601 date, or null. */
  listedDate: string | null;
  /** Addresses, absolute; never loaded by the reader. */
  photos: string[];
  /** How many adverts the page seems to hold. */
  offers: number;
  fields: Partial<Record<FieldName, FieldNote>>;
}

/** A seller's own draft, as the command line and the workbench take it. */
export interface Draft {
  id?: string | undefined;
  title?: string | undefined;
  description?: string | undefined;
  priceText?: string | undefined;
  conditionText?: string | undefined;
  serialText?: string | undefined;
  location?: string | undefined;
  language?: string | undefined;
  listedDate?: string | undefined;
  photos?: string[] | undefined;
}
