import * as z from 'zod/mini';
import { list, table } from './lists';
import { Address, Currency, entry, Id, Language, LocalText, PartialDate, Phrase, Ref, Text } from './parts';

/** A citation: words, or words with an address. `common` marks what the trade takes for granted without a source. */
export const Citation = z.union([
  Text,
  entry({
    text: Text,
    url: z.optional(Address),
    date: z.optional(PartialDate),
    common: z.optional(z.boolean()),
  }),
]);

/** Drawings on which an attribute's `place` can be shown. */
export const Outline = z.enum(['sewing-machine', 'typewriter']);

/** What kind of thing the pack speaks of. A pack is silent about an advert that shows none of these words. */
export const Covers = entry({
  thing: LocalText,
  words: list(Phrase).check(z.minLength(1)),
  /** Nouns of parts and accessories: an advert for one of these is not an advert for the thing. */
  parts: z.optional(list(Phrase)),
  /** Words that show another thing which shares a word with this one. */
  not: z.optional(list(Phrase)),
  /** The outline drawing of the thing; none where left out. */
  outline: z.optional(Outline),
  /** Every such thing is of one of the pack's types: what none of them has together can't be, or is unusual. */
  complete: z.optional(z.boolean()),
  /** The attribute that is asked about first of a thing that somebody has before them. */
  first: z.optional(Ref),
});

export const About = entry({
  id: Id,
  title: LocalText,
  /** Grows with every publication. */
  edition: z.int().check(z.gte(1)),
  licence: Text,
  language: Language,
  currency: z.optional(Currency),
  keepers: z.optional(list(entry({ name: Text, contact: z.optional(Text) }))),
  members: z.optional(list(entry({ name: Text, key: z.optional(Text) }))),
  covers: Covers,
  /** The pack whose attributes and entries this one may name without saying whose they are. */
  extends: z.optional(Id),
  sources: z.optional(table(Id, Citation)),
  /** Invented content, for demonstration and tests: said wherever the pack is shown. */
  demo: z.optional(z.boolean()),
  /** The last day, month or year of this edition; where its seal says a day too, the earlier one counts. */
  expires: z.optional(PartialDate),
  note: z.optional(LocalText),
});

export type Outline = z.infer<typeof Outline>;
export type About = z.infer<typeof About>;
export type Citation = z.infer<typeof Citation>;
