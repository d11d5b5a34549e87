import { describe, expect, it } from 'vitest';
import { DamagedError, inPages, Pages, type Stored } from '../../../../src/pack/compiled/pages';

const PAGE = 8192;
const LAYOUT = 4;
/** Twenty pages and a piece of one. */
const plain = Uint8Array.from({ length: 20 * PAGE + 24 }, (_, i) => (i * 7) >> 3);

/** The bytes with their head as they lie there, the first `here` of them at hand, and what was read of the others. */
function stored(all: Uint8Array<ArrayBuffer>, here: number) {
  const reads: [from: number, to: number][] = [];
  const first = all.slice(0, here).buffer;
  const read = (from: number, to: number) => {
    reads.push([from, to]);
    return all.slice(from, to).buffer;
  };
  return { stored: { length: all.length, first, read } satisfies Stored, reads };
}

const written = (asked = 0) => inPages(plain, asked, LAYOUT);
const whole = written();
const begin = whole.length - plain.length;

describe('pages', () => {
  it('are fetched when they are asked for, a few together and each once', () => {
    const { stored: there, reads } = stored(written(), PAGE);
    const pages = Pages.open(there, LAYOUT)!;
    expect(pages.bytes(begin + 10, begin + 20)).toEqual(plain.slice(10, 20));
    expect(reads).toEqual([]);
    expect(pages.bytes(PAGE - 2, PAGE + 2)).toEqual(whole.slice(PAGE - 2, PAGE + 2));
    expect(pages.bytes(8 * PAGE, 9 * PAGE)).toEqual(whole.slice(8 * PAGE, 9 * PAGE));
    expect(reads).toEqual([[PAGE, 9 * PAGE]]);
    expect(Buffer.compare(pages.bytes(begin, whole.length), plain)).toBe(0);
    expect(reads.slice(1)).toEqual([[9 * PAGE, whole.length]]);
  });

  it('of which a part only is here are fetched from there on, as far as others are here', () => {
    const { stored: there, reads } = stored(written(), PAGE + 100);
    const pages = Pages.open(there, LAYOUT)!;
    pages.bytes(3 * PAGE, 3 * PAGE + 1);
    expect(pages.bytes(PAGE + 90, PAGE + 110)).toEqual(whole.slice(PAGE + 90, PAGE + 110));
    expect(reads).toEqual([
      [3 * PAGE, 11 * PAGE],
      [PAGE + 100, 3 * PAGE],
    ]);
  });

  it('give their bytes where numbers of eight bytes can begin, however they came', () => {
    for (const here of [begin, PAGE, PAGE + 104, whole.length]) {
      const pages = Pages.open(stored(written(), here).stored, LAYOUT)!;
      for (const at of [begin, PAGE - 8, PAGE, 9 * PAGE - 16]) expect(pages.bytes(at, at + 24).byteOffset % 8).toBe(0);
    }
  });

  it('that most questions ask for come together', () => {
    const { stored: there, reads } = stored(written(17 * PAGE - begin - 5), begin);
    Pages.open(there, LAYOUT)!.bytes(begin, begin + 1);
    expect(reads).toEqual([[begin, 17 * PAGE]]);
  });

  it('come together where they are needed together', () => {
    const { stored: there, reads } = stored(written(), PAGE);
    Pages.open(there, LAYOUT)!.need(PAGE, 15 * PAGE + 1);
    expect(reads).toEqual([[PAGE, 16 * PAGE]]);
  });

  it('need no bytes for nothing', () => {
    const { stored: there, reads } = stored(written(), begin);
    expect(Pages.open(there, LAYOUT)!.bytes(whole.length, whole.length)).toEqual(new Uint8Array(0));
    expect(reads).toEqual([]);
  });

  it.each([0, 1, 23, begin - 1])('are not opened where only %i bytes are here, not all of the head', (here) => {
    expect(Pages.open(stored(written(), here).stored, LAYOUT)).toBeNull();
  });

  it('are damaged where bytes have changed, are too few or can’t be had, and then alone', () => {
    const changed = written();
    changed[5 * PAGE + 7]! ^= 1;
    const pages = Pages.open(stored(changed, begin).stored, LAYOUT)!;
    expect(pages.bytes(6 * PAGE, 7 * PAGE)).toEqual(whole.slice(6 * PAGE, 7 * PAGE));
    expect(() => pages.bytes(5 * PAGE, 5 * PAGE + 1)).toThrow(DamagedError);
    expect(() => pages.bytes(5 * PAGE, 5 * PAGE + 1)).toThrow(DamagedError);
    expect(() => pages.bytes(4 * PAGE, 7 * PAGE)).toThrow(DamagedError);
    const cut = { ...stored(written(), begin).stored, read: () => new ArrayBuffer(8) };
    expect(() => Pages.open(cut, LAYOUT)!.bytes(begin, begin + 1)).toThrow(DamagedError);
    const gone = {
      ...stored(written(), begin).stored,
      read: () => {
        throw new DOMException('', 'NotFoundError');
      },
    };
    expect(() => Pages.open(gone, LAYOUT)!.bytes(begin, begin + 1)).toThrow(DamagedError);
  });

  it('may have a head that is longer than one of them', () => {
    const many = new Uint8Array(2100 * PAGE);
    for (let at = 0; at < many.length; at += 1000) many[at] = at >> 10;
    const long = inPages(many, 0, LAYOUT);
    const head = long.length - many.length;
    expect(head).toBeGreaterThan(PAGE);
    const pages = Pages.open(stored(long, 3 * PAGE).stored, LAYOUT)!;
    expect(Buffer.compare(pages.bytes(head, long.length), many)).toBe(0);
  });
});
