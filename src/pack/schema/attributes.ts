import * as z from 'zod/mini';
import { packTexts as texts } from '../../text/catalogue/pack';
import { list } from './lists';
import { entry, Id, LocalText, Phrase, Positive, Share, Text } from './parts';

const common = {
  id: Id,
  label: LocalText,
  /** One line that explains the term to a newcomer. */
  explain: z.optional(LocalText),
  where: z.optional(LocalText),
  /** A named place on the outline drawing of the thing. */
  place: z.optional(Id),
  see: z.optional(LocalText),
  /** The question to whoever has the thing before them: "Where does the bobbin go in?" */
  question: z.optional(LocalText),
  /** The question to a seller. */
  ask: z.optional(LocalText),
  /** read: in the advert again; photo: ask for one; visit: go and see. */
  effort: z.optional(z.enum(['read', 'photo', 'visit'])),
  /** How often a seller's word and a viewer's eye are right about it. */
  trust: z.optional(entry({ seller: z.optional(Share), eye: z.optional(Share) })),
  /** A part fits only where this is the same: the bobbin's class, the shank. */
  fitting: z.optional(z.boolean()),
  source: z.optional(Id),
};

export const ChoiceValue = entry({
  id: Id,
  label: LocalText,
  explain: z.optional(LocalText),
  /** Words that assert this value. */
  words: z.optional(list(Phrase)),
  /** Values of the same attribute that can't hold beside this one; where left out, all the others. */
  excludes: z.optional(list(Id)),
  /** A wider value of the same attribute that this one is a kind of. */
  within: z.optional(Id),
});

export const ChoiceAttribute = entry({
  ...common,
  kind: z.literal('choice'),
  values: list(ChoiceValue).check(z.minLength(1)),
});

export const YesNoAttribute = entry({
  ...common,
  kind: z.literal('yes-no'),
  yes: z.optional(list(Phrase)),
  no: z.optional(list(Phrase)),
});

export const MeasureAttribute = entry({
  ...common,
  kind: z.literal('measure'),
  /** kg, mm, or any other unit by its own name; kg and mm are read in adverts in all usual units. */
  unit: Text,
  /** Words that tell which length is meant; a weight needs none. */
  words: z.optional(list(Phrase)),
  /** How much a case or table that was left on may add, in the unit. */
  allowance: z.optional(Positive),
});

export const Attribute = z.discriminatedUnion('kind', [ChoiceAttribute, YesNoAttribute, MeasureAttribute], {
  error: (issue) => (issue.code === 'invalid_union' ? texts.expected.attributeKind : undefined),
});

export type Attribute = z.infer<typeof Attribute>;
export type ChoiceAttribute = z.infer<typeof ChoiceAttribute>;
export type YesNoAttribute = z.infer<typeof YesNoAttribute>;
export type MeasureAttribute = z.infer<typeof MeasureAttribute>;
