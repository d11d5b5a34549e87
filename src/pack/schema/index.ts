import * as z from 'zod/mini';
import { About } from './about';
import { Attribute } from './attributes';
import { list } from './lists';
import { Family, Model } from './models';
import { entry } from './parts';
import { Photograph, Term } from './photographs';
import { Prices } from './prices';
import { Serials } from './serials';
import { Caution, Place, Wording } from './wording';

/** A pack, schema 1: what one club knows, as data. */
export const Pack = entry({
  $schema: z.optional(z.string()),
  schema: z.literal(1),
  about: About,
  attributes: z.optional(list(Attribute)),
  families: z.optional(list(Family)),
  models: z.optional(list(Model)),
  /** Brand-free kinds of the thing, in the same form as models. */
  types: z.optional(list(Model)),
  serials: z.optional(Serials),
  wording: z.optional(list(Wording)),
  prices: z.optional(Prices),
  cautions: z.optional(list(Caution)),
  photographs: z.optional(list(Photograph)),
  terms: z.optional(list(Term)),
  places: z.optional(list(Place)),
});

export type Pack = z.infer<typeof Pack>;
