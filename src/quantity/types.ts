import type { Span } from '../text/span';

/** Money read in a text. */
export interface Money extends Span {
  /** Decimal string with a point, decimals as written: "1340.00", "1200" for "1.2k". */
  amount: string;
  /** ISO 4217, or null where the sign ("$", "kr") can't be settled and no default was given. */
  currency: string | null;
  /** As written. */
  quote: string;
  /** asking unless the words beside it say otherwise ("from", "starting bid", "sold for"). */
  how: 'asking' | 'bid' | 'sold' | 'from';
  /** "ono", "VB", "or nearest offer" stand beside it. */
  negotiable: boolean;
}

/** A weight in kg or a length in mm, exact to the written digits, low = high where no range is written. */
export interface Measure extends Span {
  low: number;
  high: number;
  unit: 'kg' | 'mm';
  /** As written: "21 lb 8 oz". */
  quote: string;
  /** "approx.", "about", "ca.", "around", "~" stand before it. */
  approximate: boolean;
}

/** made: built then; other: a patent, a casting, a manual, a birthday; unknown: no word says what the year is of. */
export type YearKind = 'made' | 'launched' | 'bought' | 'owned' | 'other' | 'unknown';

export interface YearMention extends Span {
  /** Both ends included: 1940-1949 for "1940s", 1947-1949 for "late 1940s". */
  from: number;
  to: number;
  kind: YearKind;
  /** "circa", "about", "around": the audit allows some years on either side. */
  approximate: boolean;
  quote: string;
  /** The word that decided the kind, as written, or null. */
  cue: string | null;
}

export interface SerialMention extends Span {
  quote: string;
  /** Upper case, separators dropped: "K20417". */
  normal: string;
  /** The words that said it is a serial ("serial no."), or null where only the shape does. */
  cue: string | null;
}
