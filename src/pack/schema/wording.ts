import * as z from 'zod/mini';
import { packTexts as texts } from '../../text/catalogue/pack';
import { list } from './lists';
import { FactValue } from './models';
import { entry, Id, LocalText, Phrase, Positive, Ref, YearSpan } from './parts';

/** What a wording asserts. */
export const Means = z.union([
  /** a value of an attribute: "alloy" -> frame is aluminium */
  entry({ attribute: Ref, is: FactValue }),
  /** a limit, in the attribute's unit: "lightweight" -> weight at most 8 */
  entry({ attribute: Ref, atMost: z.optional(z.number()), atLeast: z.optional(z.number()) }),
  /** years made: "Victorian" -> to 1901 */
  entry({ made: YearSpan }),
  /** an age on the day of the audit, in years */
  entry({ ageAtLeast: Positive }),
  /** that few exist: fewer than so many were made */
  entry({ madeUnder: Positive }),
]);

export const Wording = entry({
  id: Id,
  words: list(Phrase).check(z.minLength(1)),
  means: z.optional(Means),
  /** firm: used wrongly it doesn't hold; loose: the word is used loosely, so it is minded and disproves nothing. */
  use: z.optional(z.enum(['firm', 'loose'])),
  /** What to mind whenever the words stand there. */
  mind: z.optional(LocalText),
  /** Why the words are true of no model that the pack covers. */
  never: z.optional(LocalText),
  /** Longer phrases in which the words mean something else: "rare colour". */
  unless: z.optional(list(Phrase)),
  /** Such ones are priced apart from those of which it isn't said: their prices can't be compared. */
  pricedApart: z.optional(z.boolean()),
  ask: z.optional(LocalText),
  explain: z.optional(LocalText),
  source: z.optional(Id),
});

export const Caution = entry({
  id: Id,
  text: LocalText,
  /** Shown when any of these holds; with none of them, always. */
  models: z.optional(list(Ref)),
  facts: z.optional(list(entry({ attribute: Ref, is: FactValue }))),
  words: z.optional(list(Phrase)),
  /** Only in adverts of these kinds; where left out, in all of them. */
  kinds: z.optional(list(z.enum(['item', 'part', 'lot']))),
  source: z.optional(Id),
});

/** Where the fields of one site's pages stand, as taught by a user: data, a path of element names and classes. */
export const Place = entry({
  host: z.string().check(z.regex(/^[a-z0-9.-]+$/, texts.expected.host), z.maxLength(253)),
  field: z.enum(['title', 'description', 'price', 'serial', 'condition', 'place', 'listedDate']),
  path: z.string().check(z.regex(/^[A-Za-z0-9 .#>_-]+$/, texts.expected.path), z.maxLength(500)),
});

export type Means = z.infer<typeof Means>;
export type Wording = z.infer<typeof Wording>;
export type Caution = z.infer<typeof Caution>;
