import type { Texts } from '../parts';
import { Column, type Numbers } from '../serials/column';
import { checksum } from './checksum';

/** "BEDP" as four bytes. */
const MAGIC = 0x50444542;
const HEAD = 24;

/**
 * Named sections of numbers and texts in one stretch of bytes: a head (magic, layout, length, check sum, length of the
 * directory), the directory as JSON, then the sections, each at a multiple of eight so that its numbers can be used as
 * they lie there. Numbers are in this machine's own order of bytes: such bytes never leave it.
 */
type Directory = Record<string, [kind: Kind, at: number, length: number, base?: number]>;

const KINDS = { u8: Uint8Array, u16: Uint16Array, u32: Uint32Array, f64: Float64Array };
/** same: a column whose numbers are all its base. */
type Kind = keyof typeof KINDS | 'same';

/** So many pieces are counted off from one whose place is known. */
const EACH = 16;

const aligned = (at: number): number => Math.ceil(at / 8) * 8;

export class SectionWriter {
  readonly #directory: Directory = {};
  readonly #sections: Numbers[] = [];
  #length = 0;

  numbers(name: string, numbers: Numbers, base = 0): void {
    this.#directory[name] = [kindOf(numbers), this.#length, numbers.length, base];
    this.#sections.push(numbers);
    this.#length = aligned(this.#length + numbers.byteLength);
  }

  column(name: string, { length, base, data }: Column): void {
    if (data) this.numbers(name, data, base);
    else this.#directory[name] = ['same', 0, length, base];
  }

  json(name: string, value: unknown): void {
    this.numbers(name, new TextEncoder().encode(JSON.stringify(value)));
  }

  texts(name: string, texts: readonly string[]): void {
    const encoder = new TextEncoder();
    const encoded = texts.map((text) => encoder.encode(text));
    const lengths = encoded.map((bytes) => bytes.length);
    const all = new Uint8Array(lengths.reduce((sum, length) => sum + length, 0));
    let at = 0;
    for (const bytes of encoded) {
      all.set(bytes, at);
      at += bytes.length;
    }
    this.pieces(name, all, lengths);
  }

  /** Pieces that stand one behind the other, of such lengths. Of every sixteenth it is written too where it begins. */
  pieces(name: string, bytes: Uint8Array, lengths: ArrayLike<number>): void {
    const begins: number[] = [];
    let begin = 0;
    for (let i = 0; i < lengths.length; i++) {
      if (i % EACH === 0) begins.push(begin);
      begin += lengths[i]!;
    }
    this.column(`${name}.lengths`, Column.of(lengths));
    this.column(`${name}.begins`, Column.of(begins));
    this.numbers(name, bytes);
  }

  finish(layout: number): Uint8Array<ArrayBuffer> {
    const directory = new TextEncoder().encode(JSON.stringify(this.#directory));
    const begin = aligned(HEAD + directory.length);
    const bytes = new Uint8Array(begin + this.#length);
    bytes.set(directory, HEAD);
    let at = begin;
    for (const numbers of this.#sections) {
      bytes.set(new Uint8Array(numbers.buffer, numbers.byteOffset, numbers.byteLength), at);
      at = aligned(at + numbers.byteLength);
    }
    const head = new Uint32Array(bytes.buffer, 0, HEAD / 4);
    head.set([MAGIC, layout, bytes.length, 0, directory.length]);
    head[3] = checksum(bytes.subarray(16));
    return bytes;
  }
}

function kindOf(numbers: Numbers): Kind {
  const found = Object.entries(KINDS).find(([, kind]) => numbers instanceof kind);
  return found![0] as Kind;
}

export class SectionReader {
  readonly #buffer: ArrayBuffer;
  readonly #directory: Directory;
  readonly #begin: number;

  /** The sections, or null where the bytes are not whole, or of another layout. */
  static open(buffer: ArrayBuffer, layout: number): SectionReader | null {
    if (buffer.byteLength < HEAD || buffer.byteLength % 8 !== 0) return null;
    const head = new Uint32Array(buffer, 0, HEAD / 4);
    if (head[0] !== MAGIC || head[1] !== layout || head[2] !== buffer.byteLength) return null;
    if (head[3] !== checksum(new Uint8Array(buffer, 16))) return null;
    return new SectionReader(buffer, head[4]!);
  }

  private constructor(buffer: ArrayBuffer, directoryLength: number) {
    this.#buffer = buffer;
    this.#directory = JSON.parse(decoded(new Uint8Array(buffer, HEAD, directoryLength))) as Directory;
    this.#begin = aligned(HEAD + directoryLength);
  }

  has(name: string): boolean {
    return this.#directory[name] !== undefined;
  }

  column(name: string): Column {
    const [kind, , length, base = 0] = this.#directory[name]!;
    return new Column(length, base, kind === 'same' ? null : this.#view(name));
  }

  /** Numbers that were written as they are, in an array of that kind. */
  numbers<N extends Numbers>(name: string): N {
    return this.#view(name) as N;
  }

  /** @throws never on bytes that `open` took: they are what was written. */
  json<T>(name: string): T {
    return JSON.parse(decoded(this.#view(name) as Uint8Array)) as T;
  }

  texts(name: string): Texts {
    const pieces = this.pieces(name);
    const known: string[] = [];
    const at = (i: number) => {
      known[i] ??= decoded(pieces.at(i));
      return known[i];
    };
    return { length: pieces.length, at };
  }

  /** Bytes that were written as pieces. */
  pieces(name: string): { length: number; at(i: number): Uint8Array } {
    const [lengths, begins] = [this.column(`${name}.lengths`), this.column(`${name}.begins`)];
    const bytes = this.numbers<Uint8Array>(name);
    const at = (i: number) => {
      let begin = begins.at(Math.floor(i / EACH));
      for (let before = i - (i % EACH); before < i; before++) begin += lengths.at(before);
      return bytes.subarray(begin, begin + lengths.at(i));
    };
    return { length: lengths.length, at };
  }

  #view(name: string): Numbers {
    const [kind, at, length] = this.#directory[name]!;
    return new KINDS[kind as keyof typeof KINDS](this.#buffer, this.#begin + at, length);
  }
}

const decoder = new TextDecoder('utf-8', { ignoreBOM: true });

function decoded(bytes: Uint8Array): string {
  return decoder.decode(bytes);
}
