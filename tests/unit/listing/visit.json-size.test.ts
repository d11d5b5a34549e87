import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Box, Line } from '../../../src/listing/types';
import { bytesOf, bytesOfBox, bytesOfLine } from '../../../src/listing/visit/json-size';

const text = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 30 }),
  fc.string({ maxLength: 30 }),
  fc.constant('\ud800x\udfff"\\\n\u0001'),
);
const count = fc.oneof(fc.nat({ max: 12 }), fc.nat());

describe('bytes as JSON', () => {
  it('of a line are those of what is written', () => {
    const run = fc.record({ at: count, flags: count, hint: text }, { requiredKeys: ['at', 'flags'] });
    const line = fc.record(
      { text, box: count, runs: fc.array(run, { maxLength: 4 }) },
      { requiredKeys: ['text', 'box'] },
    );
    fc.assert(
      fc.property(line, (one) => {
        expect(bytesOfLine(one as Line)).toBe(bytesOf(one));
      }),
    );
  });

  it('of a box are those of what is written', () => {
    const box = fc.record(
      {
        tag: text,
        parent: fc.oneof(count, fc.constant(-1)),
        from: count,
        to: count,
        hint: text,
        level: fc.integer({ min: 1, max: 6 }),
      },
      { requiredKeys: ['tag', 'parent', 'from', 'to', 'hint'] },
    );
    fc.assert(
      fc.property(box, (one) => {
        expect(bytesOfBox(one as Box)).toBe(bytesOf(one));
      }),
    );
  });
});
