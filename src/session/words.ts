import type { Outline } from '../pack/schema/about';

/** A term of the trade, explained. */
export interface Term {
  label: string;
  /** The question to whoever has the thing before them. */
  question: string | null;
  explain: string | null;
  where: string | null;
  see: string | null;
}

/** What is said of a pack wherever it speaks. */
export interface PackNote {
  id: string;
  title: string;
  edition: number;
  /** Language tag of its texts. */
  language: string;
  sealedBy: string | null;
  /** It came with the program. */
  shipped: boolean;
  /** Invented content, for demonstration. */
  demo: boolean;
  /** Which drawing shows the places that its attributes name, or null. */
  outline: Outline | null;
}

/** A word of the trade that stands in a text, explained. Offsets are UTF-16 units into that text, end exclusive. */
export interface TermSpot {
  start: number;
  end: number;
  explain: string;
}

/**
 * The words for what one audit names by reference, as plain data: the packs themselves stay where the engine runs, the
 * panel gets these.
 */
export interface Words {
  /** Model reference -> label. */
  models: ReadonlyMap<string, string>;
  /** Attribute reference -> its term, where there is something to explain. */
  terms: ReadonlyMap<string, Term>;
  /** A text that is shown -> the words of the trade in it, in order. */
  spots: ReadonlyMap<string, readonly TermSpot[]>;
  /** Pack id -> note. */
  packs: ReadonlyMap<string, PackNote>;
}

/** The drawing that an attribute's places are on, by the pack that the attribute is of. */
export function outlineFor(words: Words, attribute: string): Outline | null {
  return words.packs.get(attribute.split('/')[0] ?? '')?.outline ?? null;
}

/** A model's label; the reference itself where no pack knows it. */
export function modelLabel(words: Words, ref: string): string {
  return words.models.get(ref) ?? ref;
}
