import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { brokenAt } from '../../src/pack/json-place';

const tokens = fc.array(
  fc.constantFrom(
    '{',
    '}',
    '[',
    ']',
    ':',
    ',',
    '"',
    '"a"',
    '1',
    '-',
    '0',
    '.5',
    'e3',
    'true',
    'nul',
    ' ',
    '\n',
    '\\',
    '\\u00',
    'x',
    '\u0001',
    '/',
  ),
  { maxLength: 14 },
);

function engineAccepts(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

describe('brokenAt', () => {
  test('finds a break exactly where the engine refuses the text', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          tokens.map((parts) => parts.join('')),
          fc.json(),
          fc.string({ unit: 'binary' }),
        ),
        (text) => {
          expect(brokenAt(text) === null).toBe(engineAccepts(text));
        },
      ),
      { numRuns: 5000 },
    );
  });

  test('finds it in JSON that one character was put into, taken from or cut after', () => {
    fc.assert(
      fc.property(
        fc.json(),
        fc.nat(),
        fc.string({ minLength: 0, maxLength: 1 }),
        fc.boolean(),
        (json, where, put, cut) => {
          const at = where % (json.length + 1);
          const text = json.slice(0, at) + put + (cut ? '' : json.slice(at + (put === '' ? 1 : 0)));
          expect(brokenAt(text) === null).toBe(engineAccepts(text));
        },
      ),
      { numRuns: 3000 },
    );
  });

  test('what stands before the break can be completed, what stands up to it can not', () => {
    fc.assert(
      fc.property(
        tokens.map((parts) => parts.join('')),
        (text) => {
          const at = brokenAt(text);
          fc.pre(at !== null && at < text.length);
          // Nothing that is put after the refused character mends it: the break stays where it is.
          for (const rest of ['', '}', ']', '"', '1', '"a":1}', 'null']) {
            const more = text.slice(0, at + 1) + rest;
            expect(brokenAt(more)).toBe(at);
            expect(engineAccepts(more)).toBe(false);
          }
          // Cut before it, the text is whole or merely ends too soon.
          expect([null, at]).toContain(brokenAt(text.slice(0, at)));
        },
      ),
      { numRuns: 3000 },
    );
  });
});
