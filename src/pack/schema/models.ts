import * as z from 'zod/mini';
import { packTexts as texts } from '../../text/catalogue/pack';
import { list, table } from './lists';
import {
  Currency,
  entry,
  Id,
  Language,
  LocalText,
  PartialDate,
  Phrase,
  Positive,
  Ref,
  Share,
  Text,
  Year,
  YearSpan,
} from './parts';

/** A fact holds only for some years, places made, or serial numbers. */
export const When = entry({
  made: z.optional(YearSpan),
  places: z.optional(list(Text)),
  serials: z.optional(list(entry({ scheme: Id, first: Text, last: Text }))),
});

/** One value, yes or no, a number, a set of values (any of them occurs), or a range with both ends included. */
export const FactValue = z.union([
  Id,
  z.boolean(),
  z.number(),
  list(Id).check(z.minLength(1)),
  entry({ from: z.optional(z.number()), to: z.optional(z.number()) }),
]);

/** A bare value, or a value with what limits it. "usually": the rule has exceptions, so it minds and disproves nothing. */
export const Fact = z.union([
  FactValue,
  entry({
    is: FactValue,
    when: z.optional(When),
    holds: z.optional(z.enum(['always', 'usually'])),
    source: z.optional(Id),
    note: z.optional(LocalText),
  }),
]);

/** Attribute -> fact, or several facts for several conditions. */
export const Facts = table(
  Ref,
  z.union([
    Fact,
    list(
      entry({
        is: FactValue,
        when: z.optional(When),
        holds: z.optional(z.enum(['always', 'usually'])),
        source: z.optional(Id),
        note: z.optional(LocalText),
      }),
    ).check(z.minLength(1)),
  ]),
);

/** A name as sellers write it. `weak`: only beside the maker's or family's name, or after "model", is it a name. */
export const Name = z.union([Text, entry({ text: Text, lang: z.optional(Language), weak: z.optional(z.boolean()) })]);

export const Family = entry({
  id: Id,
  label: Text,
  names: list(Name),
  maker: z.optional(Text),
  facts: z.optional(Facts),
  /** What every member must be: an advert that says otherwise can't be one of these. */
  necessary: z.optional(Facts),
  explain: z.optional(LocalText),
  source: z.optional(Id),
});

export const Variant = entry({
  id: Id,
  label: z.optional(LocalText),
  when: When,
  facts: Facts,
  source: z.optional(Id),
});

export const Picture = entry({
  /** An inline picture (data: address of a PNG, JPEG or WebP). */
  data: z
    .string()
    .check(
      z.regex(/^data:image\/(?:png|jpeg|webp);base64,[A-Za-z0-9+/=]+$/, texts.expected.picture),
      z.maxLength(400_000),
    ),
  shows: LocalText,
  attribute: z.optional(Ref),
  credit: Text,
  licence: Text,
});

export const Model = entry({
  id: Id,
  label: Text,
  names: list(Name),
  maker: z.optional(Text),
  family: z.optional(Ref),
  /** The brand-free type that it is one of: its facts hold here too where this model says nothing else. */
  type: z.optional(Ref),
  made: z.optional(YearSpan),
  places: z.optional(list(Text)),
  /** How many were made. */
  number: z.optional(z.int().check(z.gte(1))),
  /** The share of them thought to be left. */
  survival: z.optional(Share),
  facts: z.optional(Facts),
  variants: z.optional(list(Variant)),
  mistakenFor: z.optional(list(entry({ model: Ref, rate: Share }))),
  launchPrice: z.optional(entry({ amount: Positive, currency: Currency, year: Year, source: z.optional(Id) })),
  batches: z.optional(list(entry({ size: z.int(), date: z.optional(PartialDate), source: z.optional(Id) }))),
  /** Parts and consumables that fit it. */
  fits: z.optional(
    list(
      entry({
        id: Id,
        label: LocalText,
        words: list(Phrase),
        kind: z.enum(['part', 'consumable']),
        source: z.optional(Id),
      }),
    ),
  ),
  suits: z.optional(entry({ good: z.optional(list(LocalText)), poor: z.optional(list(LocalText)) })),
  /** Where to look for an attribute, where it differs from the usual place. */
  where: z.optional(table(Ref, LocalText)),
  pictures: z.optional(list(Picture)),
  explain: z.optional(LocalText),
  source: z.optional(Id),
});

export type When = z.infer<typeof When>;
export type FactValue = z.infer<typeof FactValue>;
export type Fact = z.infer<typeof Fact>;
export type Facts = z.infer<typeof Facts>;
export type Family = z.infer<typeof Family>;
export type Model = z.infer<typeof Model>;
export type Name = z.infer<typeof Name>;
