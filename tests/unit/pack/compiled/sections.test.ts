import { describe, expect, it } from 'vitest';
import { SectionReader, SectionWriter } from '../../../../src/pack/compiled/sections';
import { Column } from '../../../../src/pack/serials/column';

const texts = ['', '\ufeffa', 'Größe', '\u{1fa7a}', 'last'];

function written(): Uint8Array<ArrayBuffer> {
  const to = new SectionWriter();
  to.json('json', { a: [1, 'é', null] });
  to.numbers('small', Uint16Array.of(1, 65_535));
  to.numbers('large', Uint32Array.of(7, 2 ** 32 - 1));
  to.column('same', Column.of([5, 5, 5]));
  to.column('years', Column.of([1900, 1955, 2000]));
  to.column('wide', Column.of([0, 2 ** 40]));
  to.column('none', Column.of([]));
  to.texts('texts', texts);
  return to.finish(3);
}

const values = (column: Column) => Array.from({ length: column.length }, (_, i) => column.at(i));

describe('sections', () => {
  it.each([0, 1, 15, 16, 17, 32, 33, 100])('give back %i texts of different lengths', (count) => {
    const many = Array.from({ length: count }, (_, i) => 'x'.repeat((i * 7) % 23));
    const to = new SectionWriter();
    to.texts('many', many);
    const read = SectionReader.open(to.finish(3).buffer, 3)!.texts('many');
    // From the last to the first: none may lean on what was read before.
    expect(Array.from({ length: read.length }, (_, i) => read.at(count - 1 - i))).toEqual([...many].reverse());
  });

  it('give back what was written', () => {
    const from = SectionReader.open(written().buffer, 3)!;
    expect(from.json('json')).toEqual({ a: [1, 'é', null] });
    expect([...from.numbers('small')]).toEqual([1, 65_535]);
    expect([...from.numbers('large')]).toEqual([7, 2 ** 32 - 1]);
    expect(['same', 'years', 'wide', 'none'].map((name) => values(from.column(name)))).toEqual([
      [5, 5, 5],
      [1900, 1955, 2000],
      [0, 2 ** 40],
      [],
    ]);
    const read = from.texts('texts');
    expect(Array.from({ length: read.length }, (_, i) => read.at(i))).toEqual(texts);
    expect([from.has('json'), from.has('other')]).toEqual([true, false]);
  });

  it('are not opened where one bit is another, wherever it is', () => {
    const { length } = written();
    for (let at = 0; at < length; at++)
      for (const bit of [1, 128]) {
        const bytes = written();
        bytes[at]! ^= bit;
        expect(SectionReader.open(bytes.buffer, 3)).toBeNull();
      }
  });

  it('are not opened where they end too soon or go on too long', () => {
    const whole = written();
    for (let length = 0; length < whole.length; length++)
      expect(SectionReader.open(whole.buffer.slice(0, length), 3)).toBeNull();
    const longer = new Uint8Array(whole.length + 8);
    longer.set(whole);
    expect(SectionReader.open(longer.buffer, 3)).toBeNull();
  });

  it('are not opened where they are laid out another way', () => {
    expect(SectionReader.open(written().buffer, 2)).toBeNull();
  });
});
