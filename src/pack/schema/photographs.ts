import * as z from 'zod/mini';
import { list } from './lists';
import { FactValue } from './models';
import { entry, Id, LocalText, Phrase, Ref, Text } from './parts';

/** A photograph that settles something. A pack lists them with the most telling first. */
export const Photograph = entry({
  id: Id,
  label: LocalText,
  /** What it settles, in a sentence to a newcomer. */
  tells: LocalText,
  /** The question to a seller. */
  ask: LocalText,
  /** Attributes that it settles: not asked for where the advert says them all, or the model is known and they with it. */
  settles: z.optional(list(Ref)),
  /** It settles which number or which model it is: not asked for where the advert gives one. */
  names: z.optional(list(z.enum(['serial', 'model']))),
  /** Asked for only where the advert or the model says one of these. */
  facts: z.optional(list(entry({ attribute: Ref, is: FactValue }))),
  /** Words by which an advert shows that it has it, or why there is none. */
  shown: z.optional(list(Phrase)),
  source: z.optional(Id),
});

/** A word of the trade that stands in a pack's own texts, explained in one line. */
export const Term = entry({
  id: Id,
  label: LocalText,
  explain: LocalText,
  /** Other words for it. */
  words: z.optional(list(Text)),
  source: z.optional(Id),
});

export type Photograph = z.infer<typeof Photograph>;
export type Term = z.infer<typeof Term>;
