import * as z from 'zod/mini';
import type { Harvest } from '../listing/types';

z.config({ jitless: true });

/** Wider than the reader's own caps (400 kB in all): what is over them didn't come from our reader. */
const LONGEST = 200_000;
const MOST = 20_000;

const text = z.string().check(z.maxLength(LONGEST));
const index = z.int().check(z.gte(-1));

const listOf = <S extends z.core.SomeType>(shape: S) => z.array(shape).check(z.maxLength(MOST));

const line = z.object({
  text,
  box: index,
  runs: z.exactOptional(listOf(z.object({ at: index, flags: z.int().check(z.gte(0)), hint: z.exactOptional(text) }))),
});

const box = z.object({
  tag: text,
  parent: index,
  from: index,
  to: index,
  hint: text,
  level: z.exactOptional(z.int().check(z.gte(1), z.lte(6))),
});

const item = z.object({
  types: listOf(text),
  id: z.nullable(text),
  properties: listOf(z.tuple([text, z.union([text, index])])),
  top: z.boolean(),
});

const mark = z.object({
  parent: index,
  tag: text,
  attributes: listOf(z.tuple([text, text])),
  text: z.exactOptional(text),
});

/**
 * The shape of what the reader brings from a page. It runs beside the page's own scripts, so its answer is checked
 * before it is kept. Keys other than these are dropped.
 */
export const HarvestShape = z.object({
  schema: z.literal(1),
  url: text,
  base: text,
  language: z.nullable(z.string().check(z.maxLength(100))),
  title: text,
  metas: listOf(z.tuple([text, text])),
  jsonLd: listOf(text),
  items: listOf(item),
  rdfa: listOf(mark),
  state: listOf(z.object({ depth: index, siblings: index, json: text })),
  page: z.object({
    lines: listOf(line),
    boxes: listOf(box),
    pictures: listOf(
      z.object({
        ...{ address: text, box: index, line: index, linked: z.boolean() },
        ...{ alt: z.exactOptional(text), small: z.exactOptional(z.boolean()) },
      }),
    ),
    times: listOf(z.object({ value: text, line: index })),
  }),
  unread: listOf(text),
  cut: z.boolean(),
});

/** Fails to compile where the shape and the reader's own type part ways. */
type Same<A, B> = [A] extends [B] ? ([B] extends [A] ? true : false) : false;
/** Optional keys too, which either type might lack unnoticed. */
type Whole<T> = T extends readonly (infer Each)[]
  ? Whole<Each>[]
  : T extends object
    ? { [K in keyof Required<T>]: Whole<T[K]> }
    : T;
export const shapeIsHarvest: Same<Whole<z.infer<typeof HarvestShape>>, Whole<Harvest>> = true;
