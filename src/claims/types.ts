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

/** By what a stance or a subject was decided: a trigger of the lists, or how the words stand. */
export type Rule =
  | 'trigger'
  | 'compared'
  | 'lacking-list'
  | 'denied-list'
  | 'crossed'
  | 'quoted'
  | 'asked'
  | 'denied-twice'
  | 'owner'
  | 'part'
  | 'noun'
  | 'weighed'
  | 'other-model'
  | 'listed-thing'
  | 'keywords'
  | 'frame'
  | 'retracted';

/** One step by which words came to their stance or subject, for explanations. */
export interface Why {
  rule: Rule;
  /** What it made of the words. */
  makes: Stance | Subject;
  /** The word that decided, as written, where one did. */
  word: string | null;
}

export interface Stanced extends Quote {
  stance: Stance;
  subject: Subject;
  /** The word that decided stance or subject, as written, or null where none did. */
  trigger: string | null;
  /** For a denial: the words together with what denies them ("not aluminium"), where both stand in one stretch. */
  denial?: Quote;
  /** It stands in a sentence that rather tells a tale: it proves nothing against the thing. */
  aside?: boolean;
  /** How it came to this, in order; absent where nothing turned it from "says" of "this". Nothing is decided by it. */
  why?: readonly Why[];
}

export type Kind = 'item' | 'part' | 'wanted' | 'lot' | 'service' | 'list' | 'none';
