import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readValue, ValueWriter } from '../../../../src/pack/compiled/values';

function back(values: readonly unknown[]): unknown[] {
  const writer = new ValueWriter();
  const { bytes, lengths } = writer.write(values.length, (place) => values[place]);
  const texts = { length: writer.texts.values.length, at: (place: number) => writer.texts.values[place]! };
  let from = 0;
  return Array.from(lengths, (length) => {
    const read = readValue(bytes.subarray(from), texts, () => writer.shapes.values as string[][]);
    from += length;
    return read;
  });
}

describe('values', () => {
  it.each([
    [null],
    [true],
    [false],
    [0],
    [127],
    [128],
    [2 ** 50 - 1],
    [2 ** 50],
    [-1],
    [0.1],
    [1e300],
    [''],
    ['Größe'],
    [[]],
    [{}],
    [{ b: 1, a: [{ b: 2, a: [] }, null, 'x', 'x'] }],
  ])('%j comes back', (value) => {
    expect(back([value])).toEqual([value]);
  });

  it('come back each from its own place, whatever JSON holds', () => {
    const json = fc.jsonValue({ maxDepth: 5 }).filter((value) => !/"__proto__"|-0/.test(JSON.stringify(value)));
    fc.assert(
      fc.property(fc.array(json, { maxLength: 6 }), (values) => {
        expect(JSON.stringify(back(values))).toBe(JSON.stringify(values));
      }),
      { numRuns: 300 },
    );
  });

  it('keep a text and the keys of an object once', () => {
    const writer = new ValueWriter();
    const row = { label: 'a long text that occurs everywhere', facts: { weight: 9 } };
    const { lengths } = writer.write(200, () => row);
    expect(writer.texts.values).toEqual([row.label]);
    expect(writer.shapes.values).toHaveLength(2);
    expect(Math.max(...lengths)).toBeLessThan(8);
  });

  it('leave out what has no value, as JSON does', () => {
    expect(back([{ a: undefined, b: 1 }])).toEqual([{ b: 1 }]);
  });
});
