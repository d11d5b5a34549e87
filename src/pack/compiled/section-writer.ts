import { Column, type Numbers } from '../serials/column';
import { aligned, inPages } from './pages';
import { type Directory, EACH, HEAD, KINDS, type Kind } from './sections';

/** Writes one stretch of named sections, see sections.ts. */
export class SectionWriter {
  readonly #directory: Directory = {};
  readonly #sections: Numbers[] = [];
  #length = 0;
  #asked = 0;

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
    this.pieces(name, joined(encoded), lengthsOf(encoded));
  }

  /** Pieces that stand one behind the other, of such lengths. Of every sixteenth it is written too where it begins. */
  pieces(name: string, bytes: Uint8Array, lengths: ArrayLike<number>): void {
    this.ends(name, lengths);
    this.numbers(name, bytes);
  }

  /** Where pieces begin and end, which may stand before other sections than the pieces do. */
  ends(name: string, lengths: ArrayLike<number>): void {
    const begins: number[] = [];
    let begin = 0;
    for (let i = 0; i < lengths.length; i++) {
      if (i % EACH === 0) begins.push(begin);
      begin += lengths[i]!;
    }
    this.column(`${name}.lengths`, Column.of(lengths));
    this.column(`${name}.begins`, Column.of(begins));
  }

  /** Texts that are mostly read all together, and now and then one by itself. */
  list(name: string, texts: readonly string[]): void {
    const encoder = new TextEncoder();
    // Each with the bracket or the comma before it.
    const lengths = texts.map((text) => encoder.encode(JSON.stringify(text)).length + 1);
    this.pieces(name, encoder.encode(JSON.stringify(texts)), lengths);
  }

  /** Most questions ask for what has been written up to here. */
  oftenAsked(): void {
    this.#asked = this.#length;
  }

  finish(layout: number): Uint8Array<ArrayBuffer> {
    const all = this.stretch();
    return inPages(all, all.length - this.#length + this.#asked, layout);
  }

  /** All sections, to be a piece of another stretch. */
  stretch(): Uint8Array {
    const directory = new TextEncoder().encode(JSON.stringify(this.#directory));
    const begin = aligned(HEAD + directory.length);
    const bytes = new Uint8Array(begin + this.#length);
    new Uint32Array(bytes.buffer)[0] = directory.length;
    bytes.set(directory, HEAD);
    let at = begin;
    for (const numbers of this.#sections) {
      bytes.set(new Uint8Array(numbers.buffer, numbers.byteOffset, numbers.byteLength), at);
      at = aligned(at + numbers.byteLength);
    }
    return bytes;
  }
}

export function lengthsOf(pieces: readonly Uint8Array[]): number[] {
  return pieces.map(({ length }) => length);
}

/** Pieces behind one another. */
export function joined(pieces: readonly Uint8Array[]): Uint8Array {
  const all = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    all.set(piece, at);
    at += piece.length;
  }
  return all;
}

function kindOf(numbers: Numbers): Kind {
  const found = Object.entries(KINDS).find(([, kind]) => numbers instanceof kind);
  return found![0] as Kind;
}
