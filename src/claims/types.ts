import type { Span } from '../text/span';

export type Stance = 'says' | 'denies' | 'likens' | 'guesses' | 'quotes';
/** Of what the words speak: the thing on sale, or something else (another machine, a case, a part, cloth). */
export type Subject = 'this' | 'other';
/** The fields of a listing in which words can be quoted. */
export type TextField = 'title' | 'description' | 'details' | 'condition' | 'serials' | 'price';

export interface Quote extends Span {
  field: TextField;
  quote: string;
}

export interface Stanced extends Quote {
  stance: Stance;
  subject: Subject;
  /** The word that decided stance or subject, as written, or null where none did. */
  trigger: string | null;
  /** For a denial: the words together with what denies them ("not aluminium"), where both stand in one stretch. */
  denial?: Quote;
}

export type Kind = 'item' | 'part' | 'wanted' | 'lot' | 'service' | 'list' | 'none';
