import * as z from 'zod/mini';
import { About } from './about';
import { Attribute } from './attributes';
import { Family, Model } from './models';
import { entry } from './parts';
import { Prices } from './prices';
import { Serials } from './serials';
import { Caution, Place, Wording } from './wording';

/** A pack, schema 1: what one club knows, as data. */
export const Pack = entry({
  $schema: z.optional(z.string()),
  schema: z.literal(1),
  about: About,
  attributes: z.optional(z.array(Attribute)),
  families: z.optional(z.array(Family)),
  models: z.optional(z.array(Model)),
  /** Brand-free kinds of the thing, in the same form as models. */
  types: z.optional(z.array(Model)),
  serials: z.optional(Serials),
  wording: z.optional(z.array(Wording)),
  prices: z.optional(Prices),
  cautions: z.optional(z.array(Caution)),
  places: z.optional(z.array(Place)),
});

export type Pack = z.infer<typeof Pack>;
