import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evened, tidy, tidyLines } from '../../../src/listing/tidy';

const text = fc
  .array(
    fc.constantFrom(
      'a',
      ' ',
      '  ',
      '\n',
      '\r\n',
      '\u2028',
      '\t',
      '\u00a0',
      '\ufeff',
      '\u0000',
      '\u0085',
      '😀',
      '\ud83d',
      'é',
    ),
    {
      maxLength: 12,
    },
  )
  .map((parts) => parts.join(''));
/** Said again in plain words: each stretch of white space and controls is one space. */
const single = (of: string) =>
  Array.from(of, (one) =>
    /^[\ud800-\udfff]$/.test(one) ? '\ufffd' : /^[\s\u0000-\u001f\u007f-\u009f]$/.test(one) ? ' ' : one,
  )
    .join('')
    .replace(/ +/g, ' ');

describe('a text', () => {
  it('is tidied alike, whether there is something to tidy or not', () => {
    fc.assert(
      fc.property(text, (one) => {
        expect(tidy(one)).toBe(single(one).trim());
        expect(evened(one)).toBe(single(one));
        const lines = one.split(/\r\n|[\r\n\u2028\u2029]/).map((line) => single(line).trim());
        expect(tidyLines(one)).toBe(lines.filter((line) => line !== '').join('\n'));
      }),
      { numRuns: 2000 },
    );
  });
});
