import type { TextPart } from './part-text';
import type { StanceOf } from './stance';
import type { Stanced } from './types';

/**
 * A stretch of a text with what is said of it. Put together field by field: each advert has a hundred of them, and to
 * spread two objects into one takes longer than to read what the second says.
 */
export function stancedQuote(part: TextPart, start: number, end: number, of: StanceOf): Stanced {
  const { stance, subject, trigger, denial, why } = of;
  const made: Stanced = { field: part.field, quote: part.text.slice(start, end), start, end, stance, subject, trigger };
  if (denial) made.denial = denial;
  if (why) made.why = why;
  return made;
}
