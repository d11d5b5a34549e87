import * as z from 'zod/mini';
import { list } from './lists';
import { Currency, entry, Id, LocalText, PartialDate, Phrase, Positive, Ref, Text } from './parts';

export const Grade = entry({
  id: Id,
  label: LocalText,
  words: z.optional(list(Phrase)),
  explain: z.optional(LocalText),
  /** The grade that is meant where an advert doesn't say. */
  usual: z.optional(z.boolean()),
});

/** What such a thing sells for: low to high holds 80 of 100; mid is the median, or the geometric mean of the ends. */
export const Band = entry({
  model: Ref,
  grade: z.optional(Id),
  low: Positive,
  mid: z.optional(Positive),
  high: Positive,
  currency: Currency,
  date: PartialDate,
  /** How many observations it is worth. */
  weight: z.optional(Positive),
  /** Of prices asked or paid; paid where left out. */
  kind: z.optional(z.enum(['asked', 'paid'])),
  source: z.optional(Id),
});

export const Factor = entry({
  id: Id,
  label: LocalText,
  kind: z.enum(['completeness', 'finish', 'place']),
  words: z.optional(list(Phrase)),
  /** What it multiplies the price by. */
  times: Positive,
  source: z.optional(Id),
});

export const PackObservation = entry({
  model: Ref,
  kind: z.enum(['asked', 'paid']),
  amount: Positive,
  currency: Currency,
  date: PartialDate,
  grade: z.optional(Id),
  complete: z.optional(z.boolean()),
  finish: z.optional(z.enum(['plain', 'refinished'])),
  place: z.optional(Text),
  seller: z.optional(z.enum(['private', 'trade'])),
  note: z.optional(Text),
  source: z.optional(Id),
});

/** Points in time, oldest first: [date, value]. */
export const Series = entry({
  currency: Currency,
  label: LocalText,
  points: list(z.tuple([PartialDate, Positive])).check(z.minLength(1)),
  source: z.optional(Id),
});

/** On that date one unit of `from` cost `rate` units of `to`. */
export const Rate = entry({
  from: Currency,
  to: Currency,
  date: PartialDate,
  rate: Positive,
  source: z.optional(Id),
});

export const Prices = entry({
  grades: z.optional(list(Grade)),
  bands: z.optional(list(Band)),
  factors: z.optional(list(Factor)),
  observations: z.optional(list(PackObservation)),
  index: z.optional(list(Series)),
  wages: z.optional(list(Series)),
  rates: z.optional(list(Rate)),
});

export type Grade = z.infer<typeof Grade>;
export type Band = z.infer<typeof Band>;
export type Factor = z.infer<typeof Factor>;
export type PackObservation = z.infer<typeof PackObservation>;
export type Series = z.infer<typeof Series>;
export type Rate = z.infer<typeof Rate>;
export type Prices = z.infer<typeof Prices>;
