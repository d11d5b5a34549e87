/** Where a value was read. Ordered by nothing: `settle` decides by stated reasons. */
export type SourceName = 'json-ld' | 'microdata' | 'rdfa' | 'state' | 'meta' | 'page' | 'draft';

export type FieldName =
  | 'title'
  | 'description'
  | 'details'
  | 'price'
  | 'serial'
  | 'condition'
  | 'place'
  | 'listedDate'
  | 'sale'
  | 'seller'
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

/** What is true of a stretch of text by the elements around it; added up in `Run.flags`. */
export const STRUCK = 1;
export const LINK = 2;
/** Text of a button or the like. */
export const CONTROL = 4;
/** Set high or small behind another text, as cents are. */
export const RAISED = 8;
/** Bold or larger, by its element. */
export const BOLD = 16;

/** A stretch of a line, from `at` (UTF-16 units) to the next run or the end. */
export interface Run {
  at: number;
  flags: number;
  /** Names of the element that holds it and of the icon before it; only of short lines and those with a digit. */
  hint?: string;
}

/** What a browser would set without a block edge or <br> in between, as a person can see it. */
export interface Line {
  text: string;
  /** Index of the innermost block-level element around it. */
  box: number;
  /** Not given: one run without flags. */
  runs?: Run[];
}

/** A block-level element with the lines inside it, `from` to `to`, end exclusive. Parents come before children. */
export interface Box {
  tag: string;
  /** Index of the box around it, -1 for the page itself. */
  parent: number;
  from: number;
  to: number;
  /** What the page calls it, in lower-case words: class, id, role, item property, test data, label; "" where there is nothing. */
  hint: string;
  /** 1 to 6 for a heading by role; a heading by tag says so itself. */
  level?: number;
}

export interface Picture {
  /** Absolute; never loaded by the reader. */
  address: string;
  box: number;
  /** How many lines stand before it. */
  line: number;
  /** It stands in a link to something else. */
  linked: boolean;
  /** What is said of it for those who can't see it; left out where nothing is. */
  alt?: string;
  /** Too small for more than a thumbnail. */
  small?: boolean;
}

/** What a person sees on the page, in document order. */
export interface PageText {
  lines: Line[];
  boxes: Box[];
  pictures: Picture[];
  /** Dates written for machines, and how many lines stand before them. */
  times: { value: string; line: number }[];
}

/** A microdata item (HTML standard, section Microdata). */
export interface Item {
  types: string[];
  id: string | null;
  /** In tree order. A number is the index of another item. */
  properties: [name: string, value: string | number][];
  /** It is not a property of another item. */
  top: boolean;
}

/** An element with RDFa attributes (RDFa Core 1.1). */
export interface RdfaMark {
  /** Index of the nearest such element around it, or -1. */
  parent: number;
  tag: string;
  /** In no order; namespaces of old as "xmlns:gr". */
  attributes: [name: string, value: string][];
  /** Its text, where that is the value of its property. */
  text?: string;
}

/** An object of the page's scripts that has the shape of something for sale. */
export interface StateObject {
  /** How far inside the script's data it stands, and among how many in the widest list around it. */
  depth: number;
  siblings: number;
  /** The object itself, pruned. */
  json: string;
}

/**
 * What one visit of a page found: capped (under 400 kB), plain JSON, safe to send between contexts. Nothing is judged
 * yet: the reader inside the page stays small, and all judgement is pure and stands outside.
 */
export interface Harvest {
  schema: 1;
  url: string;
  /** Against what relative addresses are resolved. */
  base: string;
  /** The page's own language tag (html lang), or null. */
  language: string | null;
  /** Text of the title element. */
  title: string;
  /**
   * Name (or property) and content of the meta elements, rel=canonical as "canonical", and as "currency" those that the
   * page's scripts name.
   */
  metas: [name: string, content: string][];
  /** Text of the JSON-LD blocks, unparsed. */
  jsonLd: string[];
  items: Item[];
  rdfa: RdfaMark[];
  state: StateObject[];
  page: PageText;
  /** Addresses of frames that show something of another origin, which nobody here can read. */
  unread: string[];
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
  /** "user" for what is not on the page, but was typed in by the user. */
  source: SourceName | 'user';
  /** 0 to 1. */
  confidence: number;
  /** Values that lost, most likely first. */
  alternatives: { value: string; source: SourceName }[];
  /** The user has decided, by picking one of the page's readings or by typing; left out where the reader has. */
  byUser?: 'picked' | 'typed';
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
  /** The page says that it is gone, or promised to somebody; null where it says neither. */
  sale: 'sold' | 'reserved' | null;
  /** Who sells it, where the page says so. */
  seller: 'private' | 'trade' | null;
  /** Addresses, absolute; never loaded by the reader. */
  photos: string[];
  /** How many adverts the page seems to hold. */
  offers: number;
  /** Described by somebody who has the thing before them: no advert, so that what is left out tells nothing. */
  byHand?: boolean;
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
