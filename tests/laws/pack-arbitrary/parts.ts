import fc from 'fast-check';
import { textProblem } from '../../../src/pack/schema/parts';

export const id = fc.stringMatching(/^[a-z0-9](?:[a-z0-9-]{0,6}[a-z0-9])?$/);

export const text = fc
  .oneof(fc.string({ minLength: 1, maxLength: 12 }), fc.string({ unit: 'grapheme', minLength: 1, maxLength: 6 }))
  .map((written) => written.normalize('NFC'))
  .filter((written) => textProblem(written) === null);

const language = fc.constantFrom('en', 'de', 'fr', 'pt-BR', 'und');

export const localText = fc.oneof(
  text,
  fc.dictionary(language, text, { maxKeys: 3 }).map((texts) => ({ ...texts })),
);

export const phrase = fc.oneof(text, fc.record({ text, lang: language }, { requiredKeys: ['text'] }));

/** JSON has no negative zero: it is read back as zero. */
export const number = fc.double({ noNaN: true, noDefaultInfinity: true }).map((one) => one + 0);

export const positive = fc.double({ min: 1e-6, max: 1e12, noNaN: true });

export const share = fc.double({ min: 0, max: 1, noNaN: true }).map((one) => one + 0);

export const year = fc.integer({ min: 1500, max: 2200 });

export const date = fc
  .date({ min: new Date('1500-01-01'), max: new Date('2200-12-31'), noInvalidDate: true })
  .chain((day) => fc.constantFrom(4, 7, 10).map((length) => day.toISOString().slice(0, length)));

export const currency = fc.constantFrom('GBP', 'EUR', 'USD', 'JPY');

function ordered(end: fc.Arbitrary<number>): fc.Arbitrary<{ from?: number; to?: number }> {
  return fc.tuple(end, end, fc.boolean(), fc.boolean()).map(([a, b, from, to]) => ({
    ...(from ? { from: Math.min(a, b) } : {}),
    ...(to ? { to: Math.max(a, b) } : {}),
  }));
}

export const yearSpan = ordered(year);

/** At least one end. */
export const range = ordered(number).map((span) => ('from' in span || 'to' in span ? span : { from: 0 }));

/** An id of these, in short or in full, or one of another pack. */
export function refTo(ids: readonly string[], own: string): fc.Arbitrary<string> {
  return fc.oneof(
    fc.constantFrom(...ids, ...ids.map((one) => `${own}/${one}`), 'elsewhere/thing'),
    id.map((one) => `elsewhere/${one}`),
  );
}

/** One of these ids, or nothing at all where there are none: spread into a record's parts. */
export function maybe<K extends string>(key: K, ids: readonly string[]): { [key in K]?: fc.Arbitrary<string> } {
  return ids.length > 0 ? ({ [key]: fc.constantFrom(...ids) } as { [key in K]: fc.Arbitrary<string> }) : {};
}
