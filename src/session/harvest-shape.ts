import * as z from 'zod/mini';
import type { Harvest } from '../listing/types';

z.config({ jitless: true });

/** Wider than the reader's own caps: what is over them didn't come from our reader. */
const MOST_CANDIDATES = 5_000;
const LONGEST = 400_000;

const text = z.string().check(z.maxLength(LONGEST));

/**
 * The shape of what the reader brings from a page. It runs beside the page's own scripts, so its answer is checked
 * before it is kept. Keys other than these are dropped.
 */
export const HarvestShape: z.ZodMiniType<Harvest> = z.object({
  schema: z.literal(1),
  url: text,
  language: z.nullable(z.string().check(z.maxLength(100))),
  candidates: z
    .array(
      z.object({
        field: z.enum([
          'title',
          'description',
          'details',
          'price',
          'serial',
          'condition',
          'place',
          'listedDate',
          'photo',
        ]),
        value: text,
        source: z.enum(['json-ld', 'microdata', 'meta', 'page', 'draft']),
        weight: z.number().check(z.gte(0), z.lte(1)),
        currency: z.exactOptional(z.nullable(z.string().check(z.maxLength(20)))),
        how: z.exactOptional(z.enum(['asking', 'bid', 'sold', 'from'])),
      }),
    )
    .check(z.maxLength(MOST_CANDIDATES)),
  offers: z.int().check(z.gte(0)),
  cut: z.boolean(),
});
