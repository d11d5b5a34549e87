import type { Ids, Texts } from '../parts';
import { Column, type Numbers } from '../serials/column';
import { once } from './once';
import { aligned, Pages, type Stored } from './pages';
import { type Directory, EACH, HEAD, KINDS } from './sections';

/** So many texts of a list are read one by one before all are read at once. */
const FEW = 16;

/** Pieces that are read when they are asked for. */
export interface Pieces<T> {
  length: number;
  at(i: number): T;
}

/** Reads one stretch of sections. Whatever is asked of it throws a DamagedError where the bytes for it are damaged. */
export class SectionReader {
  readonly #pages: Pages;
  readonly #directory: Directory;
  readonly #begin: number;

  /**
   * The sections, or null where the head is damaged, or of another layout.
   * @param whole all bytes are looked at; otherwise those alone that are asked for, when they are
   */
  static open(stored: Stored, layout: number, whole: boolean): SectionReader | null {
    const pages = Pages.open(stored, layout);
    if (whole) pages?.need(pages.begin, stored.length);
    return pages && new SectionReader(pages, pages.begin);
  }

  private constructor(pages: Pages, at: number) {
    const from = at + HEAD;
    const head = pages.bytes(at, from);
    const length = new Uint32Array(head.buffer, head.byteOffset, 1)[0]!;
    this.#pages = pages;
    this.#directory = JSON.parse(decoded(pages.bytes(from, from + length))) as Directory;
    this.#begin = aligned(from + length);
  }

  has(name: string): boolean {
    return this.#directory[name] !== undefined;
  }

  column(name: string): Column {
    const [kind, , length, base = 0] = this.#directory[name]!;
    return new Column(length, base, kind === 'same' ? null : this.numbers(name));
  }

  /** Numbers that were written as they are, in an array of that kind. */
  numbers<N extends Numbers>(name: string): N {
    const [kind, at, length] = this.#directory[name]!;
    const Kind = KINDS[kind as keyof typeof KINDS];
    const from = this.#begin + at;
    const { buffer, byteOffset } = this.#pages.bytes(from, from + length * Kind.BYTES_PER_ELEMENT);
    return new Kind(buffer, byteOffset, length) as N;
  }

  /** Has all from one section to another there: fetched at once, they are there sooner. */
  need(first: string, last: string): void {
    const [from, to] = [this.#directory[first]![1], this.#directory[last]![1]];
    this.#pages.need(this.#begin + from, this.#begin + to);
  }

  json<T>(name: string): T {
    return JSON.parse(decoded(this.numbers(name))) as T;
  }

  texts(name: string): Texts {
    const { length, at } = this.pieces(name);
    const known: string[] = [];
    return {
      length,
      at: (i) => {
        known[i] ??= decoded(at(i));
        return known[i];
      },
    };
  }

  list(name: string): Ids {
    const { length, at } = this.pieces(name);
    let asked = 0;
    const all = once(() => this.json<string[]>(name));
    // The bracket or the comma before it is no part of it.
    const one = (i: number) => JSON.parse(decoded(at(i).subarray(1))) as string;
    return { length, at: (i) => (asked++ < FEW ? one(i) : all()[i]!), all };
  }

  /** Bytes that were written as pieces. */
  pieces(name: string): Pieces<Uint8Array> {
    const ends = once(() => this.#ends(name));
    const at = (i: number) => {
      const [from, to] = ends()(i);
      return this.#pages.bytes(from, to);
    };
    return { length: this.#count(name), at };
  }

  stretches(name: string): Pieces<SectionReader> {
    const ends = once(() => this.#ends(name));
    const at = (i: number) => {
      const [from, to] = ends()(i);
      this.#pages.need(from, to);
      return new SectionReader(this.#pages, from);
    };
    return { length: this.#count(name), at };
  }

  #count(name: string): number {
    return this.#directory[`${name}.lengths`]![2];
  }

  /** Where each piece begins and ends in the buffer. */
  #ends(name: string): (i: number) => [from: number, to: number] {
    const [lengths, begins] = [this.column(`${name}.lengths`), this.column(`${name}.begins`)];
    const base = this.#begin + this.#directory[name]![1];
    return (i) => {
      let from = base + begins.at(Math.floor(i / EACH));
      for (let before = i - (i % EACH); before < i; before++) from += lengths.at(before);
      return [from, from + lengths.at(i)];
    };
  }
}

const decoder = new TextDecoder('utf-8', { ignoreBOM: true });

function decoded(bytes: Uint8Array): string {
  return decoder.decode(bytes);
}
