import * as z from 'zod/mini';
import { packTexts as texts } from '../../text/catalogue/pack';
import { table } from './lists';

// Zod would probe for code generation, which an extension's content security policy reports as a violation.
z.config({ jitless: true });

/** Marks objects made by `entry`, so that the published JSON Schema closes them the same way. */
export const closedObjects = new WeakSet<object>();

/**
 * An object whose unknown keys are an issue, except those that begin with "x-" (room for other people's tools).
 * Keys inherited or named `__proto__` never match a known key, so they are issues too.
 */
export function entry<S extends z.core.$ZodLooseShape>(shape: S): z.ZodMiniObject<S, z.core.$strip> {
  const known = new Set(Object.keys(shape));
  const onlyKnown = z.check(
    (ctx) => {
      const input = ctx.value as Record<string, unknown>;
      const keys = Object.keys(input).filter((key) => !known.has(key) && !key.startsWith('x-'));
      if (keys.length > 0) ctx.issues.push({ code: 'unrecognized_keys', keys, input });
    },
    // Told beside what is wrong with the known keys: a misspelt key is often why another is missing.
    { when: ({ value }: z.core.ParsePayload) => z.core.util.isPlainObject(value) },
  );
  const base = z.looseObject(shape).check(onlyKnown);
  closedObjects.add(base);
  // Typed without an index signature: code names only the known keys.
  return base as unknown as z.ZodMiniObject<S, z.core.$strip>;
}

/** Controls that reorder text on screen (Unicode Standard Annex 9): a pack could make one word look like another. */
const BIDI_CONTROLS = /[\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/;
const CONTROLS = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f]/;
const LONE_SURROGATE = /[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/;

export function textProblem(text: string): string | null {
  if (BIDI_CONTROLS.test(text)) return texts.expected.noBidi;
  if (CONTROLS.test(text)) return texts.expected.noControls;
  if (LONE_SURROGATE.test(text)) return texts.expected.noSurrogates;
  if (text.normalize('NFC') !== text) return texts.expected.nfc;
  return null;
}

const cleanText = z.check<string>((ctx) => {
  const problem = textProblem(ctx.value);
  if (problem) ctx.issues.push({ code: 'custom', input: ctx.value, message: problem });
});

/** Clean text of 1 to 2,000 characters (code points, as Zod and JSON Schema count). */
export const Text = z.string().check(z.minLength(1), z.maxLength(2000), cleanText);

/** An https address; shown to people, so it is clean text too. */
export const Address = z.string().check(z.regex(/^https:\/\/\S+$/, texts.expected.https), z.maxLength(2000), cleanText);

/** Lower-case ASCII letters, digits and inner hyphens, 80 at most. */
export const Id = z.string().check(z.regex(/^[a-z0-9](?:[a-z0-9-]*[a-z0-9])?$/, texts.expected.id), z.maxLength(80));

/** An id of this pack (or of the packs it extends), or `packId/entryId`. */
export const Ref = z
  .string()
  .check(
    z.regex(/^(?:[a-z0-9](?:[a-z0-9-]*[a-z0-9])?\/)?[a-z0-9](?:[a-z0-9-]*[a-z0-9])?$/, texts.expected.ref),
    z.maxLength(161),
  );

/** A BCP 47 language tag of the simple kind: "en", "de", "pt-BR". */
export const Language = z.string().check(z.regex(/^[a-z]{2,3}(?:-[A-Za-z0-9]{2,8})*$/, texts.expected.language));

/** ISO 4217 alphabetic code. */
export const Currency = z.string().check(z.regex(/^[A-Z]{3}$/, texts.expected.currency));

/** One text in the pack's language, or one per language. */
export const LocalText = z.union([Text, table(Language, Text)]);

export const Year = z.int().check(z.gte(1500), z.lte(2200));

const PARTIAL_DATE = /^\d{4}(?:-(?:0[1-9]|1[0-2])(?:-(?:0[1-9]|[12]\d|3[01]))?)?$/;

const inCalendar = z.check<string>((ctx) => {
  const [year, month, day] = ctx.value.split('-').map(Number);
  if (!PARTIAL_DATE.test(ctx.value) || !day || !month) return;
  const leap = year! % 4 === 0 && (year! % 100 !== 0 || year! % 400 === 0);
  const last = month === 2 ? (leap ? 29 : 28) : [4, 6, 9, 11].includes(month) ? 30 : 31;
  if (day > last) ctx.issues.push({ code: 'custom', input: ctx.value, message: texts.expected.realDate });
});

/** "1954", "1954-03" or "1954-03-17" (ISO 8601): a day, month or year that the Gregorian calendar has. */
export const PartialDate = z.string().check(z.regex(PARTIAL_DATE, texts.expected.date), inCalendar);

/** Years, both ends included; an end left out is open. */
export const YearSpan = entry({ from: z.optional(Year), to: z.optional(Year) });

export const Positive = z.number().check(z.gt(0));
export const Share = z.number().check(z.gte(0), z.lte(1));

/** Words as they are written, matched token by token whatever the case, accents, hyphens and spaces. No patterns. */
export const Phrase = z.union([
  Text,
  entry({
    text: Text,
    /** The language the phrase belongs to; the pack's own where left out; "und" for any. */
    lang: z.optional(Language),
  }),
]);

export type Text = z.infer<typeof Text>;
export type LocalText = z.infer<typeof LocalText>;
export type YearSpan = z.infer<typeof YearSpan>;
export type Phrase = z.infer<typeof Phrase>;
