import { describe, expect, it } from 'vitest';
import { DamagedError } from '../../../../src/pack/compiled/pages';
import { SectionReader } from '../../../../src/pack/compiled/section-reader';
import { joined, lengthsOf, SectionWriter } from '../../../../src/pack/compiled/section-writer';
import { Column } from '../../../../src/pack/serials/column';

const texts = ['', '\ufeffa', 'Größe', '\u{1fa7a}', 'last'];

const opened = (first: ArrayBuffer, layout: number) =>
  SectionReader.open({ length: first.byteLength, first, read: () => new ArrayBuffer(0) }, layout, true);

function isRefused(bytes: ArrayBuffer): boolean {
  try {
    return opened(bytes, 3) === null;
  } catch (error) {
    return error instanceof DamagedError;
  }
}

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
    const read = opened(to.finish(3).buffer, 3)!.texts('many');
    // From the last to the first: none may lean on what was read before.
    expect(Array.from({ length: read.length }, (_, i) => read.at(count - 1 - i))).toEqual([...many].reverse());
  });

  it('give back what was written', () => {
    const from = opened(written().buffer, 3)!;
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

  it.each([0, 1, 5, 40])('give back a list of %i texts, one by one or all together', (count) => {
    const all = Array.from({ length: count }, (_, i) => `é"${'x'.repeat(i)}`);
    const to = new SectionWriter();
    to.list('list', all);
    const from = opened(to.finish(3).buffer, 3)!;
    const [one, other] = [from.list('list'), from.list('list')];
    expect(one.length).toBe(count);
    expect(Array.from({ length: count }, (_, i) => one.at(count - 1 - i))).toEqual([...all].reverse());
    expect(other.all()).toEqual(all);
  });

  it('give back stretches of sections, which may have their ends elsewhere', () => {
    const stretches = [3, 0, 12].map((count) => {
      const within = new SectionWriter();
      within.numbers(
        'numbers',
        Float64Array.from({ length: count }, (_, i) => i / 3),
      );
      return within.stretch();
    });
    const to = new SectionWriter();
    to.ends('tables', lengthsOf(stretches));
    to.numbers('odd', Uint8Array.of(1, 2, 3));
    to.numbers('tables', joined(stretches));
    const read = opened(to.finish(3).buffer, 3)!.stretches('tables');
    expect(read.length).toBe(3);
    expect([2, 1, 0].map((i) => [...read.at(i).numbers('numbers')])).toEqual(
      [12, 0, 3].map((count) => Array.from({ length: count }, (_, i) => i / 3)),
    );
  });

  it('are not opened where one bit is another, wherever it is', () => {
    const { length } = written();
    for (let at = 0; at < length; at++)
      for (const bit of [1, 128]) {
        const bytes = written();
        bytes[at]! ^= bit;
        expect(isRefused(bytes.buffer)).toBe(true);
      }
  });

  it('are not opened where they end too soon or go on too long', () => {
    const whole = written();
    for (let length = 0; length < whole.length; length++) expect(isRefused(whole.buffer.slice(0, length))).toBe(true);
    const longer = new Uint8Array(whole.length + 8);
    longer.set(whole);
    expect(isRefused(longer.buffer)).toBe(true);
  });

  it('are not opened where they are laid out another way', () => {
    expect(opened(written().buffer, 2)).toBeNull();
  });
});
