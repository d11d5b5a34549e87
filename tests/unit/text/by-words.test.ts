import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { byWords } from '../../../src/text/by-words';

const PATTERNS = [
  /\b(?:was|you save|p&p|ver\w*|buyer'?s premium|est\.|n[aeo]w|in full\w*|taxat\w* of)\b/,
  /\b(?:user|sell(?:er|s)|old-?price|price(?! from)\w* of|(?:a|b) dozen|our (?:\d+ )?friends)/,
  /^(?:(?:this (?:item|ad)|it) )?(?:is )?(?:sold(?: out)?|gone)[.!]?$|^sale of .{1,9}$/,
  /^contact .*|\bmo\b/,
];
const PIECES = [
  ...[
    'was',
    'you',
    'save',
    'p&p',
    'p',
    'ver',
    'versand',
    'buyer',
    "'s",
    's',
    'premium',
    'est',
    '.',
    'naw',
    'now',
    'in',
    'full',
  ],
  ...[
    'taxation',
    'of',
    'user',
    'users',
    'sell',
    'er',
    'old',
    'price',
    'from',
    'a',
    'b',
    'dozen',
    'our',
    '12',
    'friends',
  ],
  ...[
    'this',
    'item',
    'ad',
    'it',
    'is',
    'sold',
    'out',
    'gone',
    '!',
    'sale',
    'contact',
    'mo',
    ' ',
    ' ',
    ' ',
    '-',
    '9',
    '_',
    'é',
  ],
];

describe('a pattern that is looked up by words', () => {
  it('finds in any text what it finds by itself', () => {
    for (const pattern of PATTERNS) {
      const plain = new RegExp(pattern.source);
      const quick = byWords(pattern);
      fc.assert(
        fc.property(fc.array(fc.constantFrom(...PIECES), { maxLength: 9 }), (parts) => {
          const text = parts.join('');
          expect([text, quick.test(text)]).toEqual([text, plain.test(text)]);
          expect([text, quick.exec(text)?.[0]]).toEqual([text, plain.exec(text)?.[0]]);
        }),
        { numRuns: 4000 },
      );
    }
  });

  it('is refused where it may begin with anything', () => {
    const patterns = [/\b\d+ x/, /price/, /\bse\w*/];
    for (const pattern of patterns) expect(() => byWords(pattern).test('x')).toThrow('Begins with no word');
  });
});
