import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wellDecoded } from '../../../src/listing/decide/mis-decoded';
import { readDraft } from '../../../src/listing/draft';
import { readPlaces } from '../../../src/session/read-places';

/** The stretch of a written text that corresponds to these words of the text as read. */
function writtenFor(written: string, words: string): string | null {
  const read = readDraft({ description: written }).description;
  const at = read.indexOf(words);
  if (at < 0) throw new Error(`"${words}" is not in "${read}"`);
  const span = readPlaces(written, read)?.span(at, at + words.length);
  return span ? written.slice(span.start, span.end) : null;
}

describe('the way back from a text as read to the text as written', () => {
  it.each([
    ['single spaces', '  a   full\t size  machine', 'full size', 'full\t size'],
    ['empty lines', 'one\n\n\n two\r\n three', 'two\nthree', 'two\r\n three'],
    ['escapes', 'bits &amp; pieces', 'bits & pieces', 'bits &amp; pieces'],
    ['after an escape', 'bits &amp;amp; pieces', 'pieces', 'pieces'],
    ['escapes that nobody knows', 'a &foolish; name', 'foolish; name', 'foolish; name'],
    ['escaped spaces', 'full &nbsp; size', 'full size', 'full &nbsp; size'],
    ['wrongly decoded letters', 'ask for Â£40, a cafÃ© machine', '£40, a café', 'Â£40, a cafÃ©'],
    ['characters beyond the first plane', 'the 🧵 thread', 'thread', 'thread'],
  ])('leads over %s', (_what, written, words, expected) => {
    expect(writtenFor(written, words)).toBe(expected);
  });

  it('leads nowhere for another text, rather than to wrong words', () => {
    expect(readPlaces('a machine', 'another one')).toBeNull();
    expect(readPlaces('', 'x')).toBeNull();
  });

  it('leads from every word as read to that word as written', () => {
    const word = fc.stringMatching(/^[a-zé£½]{1,8}$/);
    const space = fc.stringMatching(/^[ \t\n]{1,4}$/);
    fc.assert(
      fc.property(fc.array(fc.tuple(word, space), { minLength: 1, maxLength: 30 }), (parts) => {
        const written = parts.map(([letters, gap]) => letters + gap).join('');
        const read = readDraft({ description: written }).description;
        const places = readPlaces(written, read);
        for (const { 0: letters, index } of read.matchAll(/\S+/g)) {
          const span = places?.span(index, index + letters.length);
          expect(span && wellDecoded(written.slice(span.start, span.end))).toBe(letters);
        }
      }),
    );
  });
});
