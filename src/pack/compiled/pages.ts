import { checksum } from './checksum';

/** "BEDP" as four bytes. */
const MAGIC = 0x50444542;
const HEAD = 24;
/** So many bytes are checked at once. */
const PAGE = 2 ** 13;
/** So many are fetched at least where some are asked for: how long that takes depends little on how many they are. */
const AT_ONCE = 2 ** 16;
/** So many of those that most questions ask for. */
const MOST_AT_ONCE = 2 ** 19;

export const aligned = (at: number): number => Math.ceil(at / 8) * 8;

/** Bytes that lie elsewhere, but for the first of them. */
export interface Stored {
  length: number;
  first: ArrayBuffer;
  /** Those from `from` to before `to`, which is behind the first ones. @throws where they can't be had any more */
  read(from: number, to: number): ArrayBuffer;
}

/** Bytes that came together, and the place of the first of them. */
interface Stretch {
  from: number;
  bytes: ArrayBuffer;
}

/** Thrown where bytes that are asked for are not those that were written, or are gone: they have to be made anew. */
export class DamagedError extends Error {
  override name = 'DamagedError';
}

/**
 * Bytes in pages, each of which is fetched and checked when it is first asked for: of a large pack one question asks for
 * a tenth. Before them stands a head: magic, layout, length, check sum of what follows in the head, number of pages, how
 * many of these most questions ask for, and the check sum of each page. Pages are counted from the beginning of the head,
 * which its own check sum holds. Numbers are in this machine's own order of bytes: such bytes never leave it.
 */
export class Pages {
  /** Where the head ends. */
  readonly begin: number;
  readonly #stored: Stored;
  readonly #asked: number;
  readonly #sums: Uint32Array;
  /** For each page that is here the bytes that it came with. Room for all pages at once would be cleared first, and tidied for. */
  readonly #here: (Stretch | undefined)[];
  readonly #checked: Uint8Array;

  /** null where the head is not whole, or of another layout. The head has to lie among the first bytes. */
  static open(stored: Stored, layout: number): Pages | null {
    const { first, length } = stored;
    if (first.byteLength < HEAD) return null;
    const [magic, itsLayout, itsLength, sum, pages = 0, asked = 0] = new Uint32Array(first, 0, HEAD / 4);
    const begin = beginOf(pages);
    if (magic !== MAGIC || itsLayout !== layout || itsLength !== length || begin > first.byteLength) return null;
    if (sum !== checksum(new Uint8Array(first, 16, begin - 16))) return null;
    return new Pages(stored, begin, pages, asked);
  }

  private constructor(stored: Stored, begin: number, pages: number, asked: number) {
    const { first, length } = stored;
    this.begin = begin;
    this.#stored = stored;
    this.#asked = asked;
    this.#sums = new Uint32Array(first, HEAD, pages);
    this.#checked = new Uint8Array(pages);
    const whole = first.byteLength === length ? pages : Math.floor(first.byteLength / PAGE);
    this.#here = new Array(pages);
    this.#here.fill({ from: 0, bytes: first }, 0, whole);
  }

  /** The bytes from `from` to before `to`, as they were written. @throws DamagedError where they are others, or gone */
  bytes(from: number, to: number): Uint8Array<ArrayBuffer> {
    if (to <= from) return new Uint8Array(0);
    this.need(from, to);
    const there = this.#here[pageAt(from)]!;
    if (there === this.#here[pageAt(to - 1)]) return new Uint8Array(there.bytes, from - there.from, to - from);
    const all = new Uint8Array(to - from);
    for (let at = from; at < to; ) {
      const { from: begin, bytes } = this.#here[pageAt(at)]!;
      const end = Math.min(to, (pageAt(at) + 1) * PAGE);
      all.set(new Uint8Array(bytes, at - begin, end - at), at - from);
      at = end;
    }
    return all;
  }

  /** Has those bytes here: those that are asked for later are fetched sooner together. @throws as `bytes` does */
  need(from: number, to: number): void {
    const last = pageAt(to - 1);
    for (let page = pageAt(from); page <= last; page++) if (this.#checked[page] === 0) this.#take(page, last);
  }

  #take(page: number, last: number): void {
    this.#here[page] ??= this.#fetch(page, last);
    const { from, bytes } = this.#here[page];
    const at = Math.max(this.begin, page * PAGE);
    const end = Math.min(this.#stored.length, (page + 1) * PAGE);
    if (checksum(new Uint8Array(bytes, at - from, end - at)) !== this.#sums[page])
      throw new DamagedError('bytes of a compiled pack have changed');
    this.#checked[page] = 1;
  }

  /** Fetches a page with those behind it that aren't here yet, to the last one wanted and a few more. */
  #fetch(page: number, last: number): Stretch {
    const more = Math.max(page + AT_ONCE / PAGE, Math.min(this.#asked, page + MOST_AT_ONCE / PAGE));
    const most = Math.min(this.#here.length, Math.max(last + 1, more));
    let end = page + 1;
    while (end < most && !this.#here[end]) end++;
    const { first, length } = this.#stored;
    const from = page * PAGE;
    const read = this.#read(Math.max(first.byteLength, from), Math.min(length, end * PAGE));
    // A piece of the page may be among the first bytes.
    const made = { from, bytes: first.byteLength > from ? joined(first.slice(from), read) : read };
    this.#here.fill(made, page, end);
    return made;
  }

  #read(from: number, to: number): ArrayBuffer {
    let read: ArrayBuffer;
    try {
      read = this.#stored.read(from, to);
    } catch (cause) {
      throw new DamagedError('bytes of a compiled pack can’t be read', { cause });
    }
    if (read.byteLength !== to - from) throw new DamagedError('bytes of a compiled pack are gone');
    return read;
  }
}

/**
 * The bytes with a head before them.
 * @param bytes a multiple of eight of them, and `asked`, how many from the first on are what most questions ask for
 */
export function inPages(bytes: Uint8Array, asked: number, layout: number): Uint8Array<ArrayBuffer> {
  const pages = pagesFor(bytes.length);
  const begin = beginOf(pages);
  const whole = new Uint8Array(begin + bytes.length);
  whole.set(bytes, begin);
  const head = new Uint32Array(whole.buffer, 0, begin / 4);
  head.set([MAGIC, layout, whole.length, 0, pages, Math.ceil((begin + asked) / PAGE)]);
  for (let page = 0; page < pages; page++)
    head[HEAD / 4 + page] = checksum(whole.subarray(Math.max(begin, page * PAGE), (page + 1) * PAGE));
  head[3] = checksum(whole.subarray(16, begin));
  return whole;
}

/** Up to where most questions ask for such bytes, at least `least` and at most to their end. */
export function oftenAskedIn(bytes: ArrayBuffer, least: number): number {
  const asked = bytes.byteLength < HEAD ? 0 : new Uint32Array(bytes, 0, HEAD / 4)[5]!;
  return Math.min(bytes.byteLength, Math.max(least, asked * PAGE));
}

const beginOf = (pages: number): number => aligned(HEAD + pages * Uint32Array.BYTES_PER_ELEMENT);

const pageAt = (place: number): number => Math.floor(place / PAGE);

/** How many pages so many bytes take with the head before them, which grows with the pages. */
function pagesFor(length: number): number {
  let pages = 0;
  while (pages * PAGE < beginOf(pages) + length) pages++;
  return pages;
}

function joined(before: ArrayBuffer, bytes: ArrayBuffer): ArrayBuffer {
  const both = new Uint8Array(before.byteLength + bytes.byteLength);
  both.set(new Uint8Array(before));
  both.set(new Uint8Array(bytes), before.byteLength);
  return both.buffer;
}
