import * as z from 'zod/mini';
import { packTexts as texts } from '../../text/catalogue/pack';
import { list } from './lists';
import { entry, Id, PartialDate, Ref, Text, Year } from './parts';

/** How one maker writes its numbers: letters before, how many digits, letters after. */
export const Scheme = entry({
  id: Id,
  maker: z.optional(Text),
  prefix: z.string().check(z.regex(/^[A-Z0-9]{0,8}$/, texts.expected.affix)),
  /** How many digits: exactly so many, or from-to. 15 at most. */
  digits: z.union([
    z.int().check(z.gte(1), z.lte(15)),
    z.tuple([z.int().check(z.gte(1), z.lte(15)), z.int().check(z.gte(1), z.lte(15))]),
  ]),
  suffix: z.optional(z.string().check(z.regex(/^[A-Z0-9]{0,8}$/, texts.expected.affix))),
  /** Every number of this scheme is in the runs: one that is in none was not allotted. */
  complete: z.optional(z.boolean()),
  where: z.optional(Text),
  source: z.optional(Id),
});

/** A serial, or its digits alone, as printed in a table. */
const SerialText = z.string().check(z.regex(/^[A-Za-z0-9][A-Za-z0-9 ./-]*$/, texts.expected.serial), z.maxLength(40));

/**
 * Allotted runs in columns of one length, so that 100,000 runs stay small: run i is scheme[i], first[i] to last[i]
 * (both included), for models[i] (several where a block was shared). Runs may nest and overlap.
 */
export const Runs = entry({
  scheme: list(Id),
  first: list(SerialText),
  last: list(SerialText),
  models: list(list(Ref)),
  /** The year of the allotment, or null. */
  year: z.optional(list(z.nullable(Year))),
  /** The date of the allotment where more is known than the year. */
  date: z.optional(list(z.nullable(PartialDate))),
  place: z.optional(list(z.nullable(Text))),
  source: z.optional(list(z.nullable(Id))),
});

/** Every serial of an advert is held against every scheme, so their number is bounded; real tables have a few dozen. */
const MOST_SCHEMES = 500;

export const Serials = entry({ schemes: list(Scheme).check(z.maxLength(MOST_SCHEMES)), runs: Runs });

export type Scheme = z.infer<typeof Scheme>;
export type Runs = z.infer<typeof Runs>;
export type Serials = z.infer<typeof Serials>;
