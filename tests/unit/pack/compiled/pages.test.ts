import { describe, expect, it } from 'vitest';
import { DamagedError, inPages, Pages, type Stored } from '../../../../src/pack/compiled/pages';

const PAGE = 8192;
const LAYOUT = 4;
/** Twenty pages and a piece of one. */
const plain = Uint8Array.from({ length: 20 * PAGE + 24 }, (_, i) => (i * 7) >> 3);

/** The bytes with their head as they lie there, the first `here` of them at hand, and what was read of the others. */
function stored(whole: Uint8Array<ArrayBuffer>, here: number) {
  const reads: [from: number, to: number][] = [];
  const first = whole.slice(0, here).buffer;
  const read = (from: number, to: number) => {
    reads.push([from, to]);
    return whole.slice(from, to).buffer;
  };
  return { stored: { length: whole.length, first, read } satisfies Stored, reads };
}

const written = (asked = 0) => inPages(plain, asked, LAYOUT);
const begin = written().length - plain.length;
/** What lies there once it is needed. */
function needed(pages: Pages, from: number, to: number): Uint8Array {
  pages.need(begin + from, begin + to);
  return new Uint8Array(pages.buffer, begin + from, to - from);
}

describe('pages', () => {
  it('are fetched when they are asked for, a few together and each once', () => {
    const { stored: there, reads } = stored(written(), begin + PAGE);
    const pages = Pages.open(there, LAYOUT)!;
    expect(needed(pages, 10, 20)).toEqual(plain.slice(10, 20));
    expect(reads).toEqual([]);
    expect(needed(pages, PAGE - 2, PAGE + 2)).toEqual(plain.slice(PAGE - 2, PAGE + 2));
    expect(needed(pages, 8 * PAGE, 9 * PAGE)).toEqual(plain.slice(8 * PAGE, 9 * PAGE));
    expect(reads).toEqual([[begin + PAGE, begin + 9 * PAGE]]);
    expect(Buffer.compare(needed(pages, 0, plain.length), plain)).toBe(0);
    expect(reads.slice(1)).toEqual([[begin + 9 * PAGE, begin + plain.length]]);
  });

  it('of which a part only is here are fetched from there on, as far as others are here', () => {
    const { stored: there, reads } = stored(written(), begin + PAGE + 100);
    const pages = Pages.open(there, LAYOUT)!;
    needed(pages, 3 * PAGE, 3 * PAGE + 1);
    expect(needed(pages, PAGE + 90, PAGE + 110)).toEqual(plain.slice(PAGE + 90, PAGE + 110));
    expect(reads).toEqual([
      [begin + 3 * PAGE, begin + 11 * PAGE],
      [begin + PAGE + 100, begin + 3 * PAGE],
    ]);
  });

  it('that most questions ask for come together', () => {
    const { stored: there, reads } = stored(written(17 * PAGE - 5), begin);
    needed(Pages.open(there, LAYOUT)!, 0, 1);
    expect(reads).toEqual([[begin, begin + 17 * PAGE]]);
  });

  it('need no bytes for nothing', () => {
    const { stored: there, reads } = stored(written(), begin);
    Pages.open(there, LAYOUT)!.need(begin + plain.length, begin + plain.length);
    expect(reads).toEqual([]);
  });

  it.each([0, 1, 23, begin - 1])('are not opened where only %i bytes are here, not all of the head', (here) => {
    expect(Pages.open(stored(written(), here).stored, LAYOUT)).toBeNull();
  });

  it('are damaged where bytes have changed, are too few or can’t be had, and then alone', () => {
    const changed = written();
    changed[begin + 5 * PAGE + 7]! ^= 1;
    const pages = Pages.open(stored(changed, begin).stored, LAYOUT)!;
    expect(needed(pages, 6 * PAGE, 7 * PAGE)).toEqual(plain.slice(6 * PAGE, 7 * PAGE));
    expect(() => needed(pages, 5 * PAGE, 5 * PAGE + 1)).toThrow(DamagedError);
    expect(() => needed(pages, 5 * PAGE, 5 * PAGE + 1)).toThrow(DamagedError);
    const cut = { ...stored(written(), begin).stored, read: () => new ArrayBuffer(8) };
    expect(() => needed(Pages.open(cut, LAYOUT)!, 0, 1)).toThrow(DamagedError);
    const gone = {
      ...stored(written(), begin).stored,
      read: () => {
        throw new DOMException('', 'NotFoundError');
      },
    };
    expect(() => needed(Pages.open(gone, LAYOUT)!, 0, 1)).toThrow(DamagedError);
  });
});
