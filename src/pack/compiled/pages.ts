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

const [ELSEWHERE, HERE, CHECKED] = [0, 1, 2];

export const aligned = (at: number): number => Math.ceil(at / 8) * 8;

/** Bytes that lie elsewhere, but for the first of them. */
export interface Stored {
  length: number;
  first: ArrayBuffer;
  /** Those from `from` to before `to`, which is behind the first ones. @throws where they can't be had any more */
  read(from: number, to: number): ArrayBuffer;
}

/** Thrown where bytes that are asked for are not those that were written, or are gone: they have to be made anew. */
export class DamagedError extends Error {
  override name = 'DamagedError';
}

/**
 * Bytes in pages, each of which is fetched and checked when it is first asked for: of a large pack one question asks for
 * a tenth. Before them stands a head: magic, layout, length, check sum of what follows in the head, number of pages, how
 * many of these most questions ask for, and the check sum of each page. Numbers are in this machine's own order of bytes:
 * such bytes never leave it.
 */
export class Pages {
  /** Where the first page begins. */
  readonly begin: number;
  /** All bytes at their places; those that `need` was not asked for may not be there yet. */
  readonly buffer: ArrayBuffer;
  readonly #stored: Stored;
  readonly #asked: number;
  readonly #sums: Uint32Array;
  readonly #states: Uint8Array;

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
    this.#states = new Uint8Array(pages);
    if (first.byteLength === length) this.buffer = first;
    else {
      this.buffer = new ArrayBuffer(length);
      new Uint8Array(this.buffer).set(new Uint8Array(first));
    }
    this.#states.fill(HERE, 0, first.byteLength === length ? pages : Math.floor((first.byteLength - begin) / PAGE));
  }

  /** Has the bytes from `from` to before `to` there. @throws DamagedError where they aren't what was written */
  need(from: number, to: number): void {
    if (to <= from) return;
    const last = Math.floor((to - 1 - this.begin) / PAGE);
    for (let page = Math.floor((from - this.begin) / PAGE); page <= last; page++)
      if (this.#states[page] !== CHECKED) this.#take(page, last);
  }

  #take(page: number, last: number): void {
    if (this.#states[page] === ELSEWHERE) this.#fetch(page, last);
    const at = this.begin + page * PAGE;
    const bytes = new Uint8Array(this.buffer, at, Math.min(PAGE, this.buffer.byteLength - at));
    if (checksum(bytes) !== this.#sums[page]) throw new DamagedError('bytes of a compiled pack have changed');
    this.#states[page] = CHECKED;
  }

  /** Fetches a page with those behind it that aren't here yet, to the last one wanted and a few more. */
  #fetch(page: number, last: number): void {
    const more = Math.max(page + AT_ONCE / PAGE, Math.min(this.#asked, page + MOST_AT_ONCE / PAGE));
    const most = Math.min(this.#states.length, Math.max(last + 1, more));
    let end = page + 1;
    while (end < most && this.#states[end] === ELSEWHERE) end++;
    const { first, length } = this.#stored;
    const from = Math.max(first.byteLength, this.begin + page * PAGE);
    const to = Math.min(length, this.begin + end * PAGE);
    new Uint8Array(this.buffer, from, to - from).set(new Uint8Array(this.#read(from, to)));
    this.#states.fill(HERE, page, end);
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
  const pages = Math.ceil(bytes.length / PAGE);
  const begin = beginOf(pages);
  const whole = new Uint8Array(begin + bytes.length);
  whole.set(bytes, begin);
  const head = new Uint32Array(whole.buffer, 0, begin / 4);
  head.set([MAGIC, layout, whole.length, 0, pages, Math.ceil(asked / PAGE)]);
  for (let page = 0; page < pages; page++)
    head[HEAD / 4 + page] = checksum(bytes.subarray(page * PAGE, (page + 1) * PAGE));
  head[3] = checksum(whole.subarray(16, begin));
  return whole;
}

const beginOf = (pages: number): number => aligned(HEAD + pages * Uint32Array.BYTES_PER_ELEMENT);
