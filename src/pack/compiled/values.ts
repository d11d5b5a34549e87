import type { Texts } from '../parts';
import { Dictionary } from '../serials/dictionary';

/**
 * JSON values in few bytes: a text, and the keys of an object, stand once, however often they occur.
 *
 * Each value begins with a number of variable length (seven bits to a byte, the lowest first), of which the lowest three
 * bits say what it is and the rest how much of it: a list or the keys of an object by their count or place, a text by
 * its place, a whole number by itself. Other numbers follow as eight bytes.
 */
const [NULL, FALSE, TRUE, WHOLE, NUMBER, TEXT, LIST, OBJECT] = [0, 1, 2, 3, 4, 5, 6, 7];

export class ValueWriter {
  readonly texts = new Dictionary<string>((text) => text);
  readonly shapes = new Dictionary<readonly string[]>((keys) => JSON.stringify(keys));
  #bytes = new Uint8Array(1024);
  #length = 0;

  /** The bytes of each value in turn, and how many they are. */
  write(count: number, at: (place: number) => unknown): { bytes: Uint8Array; lengths: Uint32Array } {
    this.#length = 0;
    const lengths = new Uint32Array(count);
    for (let i = 0; i < count; i++) {
      const before = this.#length;
      this.#value(at(i));
      lengths[i] = this.#length - before;
    }
    return { bytes: this.#bytes.slice(0, this.#length), lengths };
  }

  #value(value: unknown): void {
    if (value === null || typeof value === 'boolean') this.#head(value === null ? NULL : value ? TRUE : FALSE, 0);
    else if (typeof value === 'string') this.#head(TEXT, this.texts.place(value));
    else if (typeof value === 'number') this.#number(value);
    else if (Array.isArray(value)) {
      this.#head(LIST, value.length);
      for (const one of value) this.#value(one);
    } else {
      const entries = Object.entries(value as object).filter(([, one]) => one !== undefined);
      this.#head(OBJECT, this.shapes.place(entries.map(([key]) => key)));
      for (const [, one] of entries) this.#value(one);
    }
  }

  #number(value: number): void {
    if (Number.isInteger(value) && value >= 0 && value < 2 ** 50) this.#head(WHOLE, value);
    else {
      this.#head(NUMBER, 0);
      for (const byte of new Uint8Array(Float64Array.of(value).buffer)) this.#byte(byte);
    }
  }

  #head(kind: number, amount: number): void {
    let rest = amount * 8 + kind;
    for (; rest >= 128; rest = Math.floor(rest / 128)) this.#byte((rest % 128) + 128);
    this.#byte(rest);
  }

  #byte(byte: number): void {
    if (this.#length === this.#bytes.length) {
      const larger = new Uint8Array(this.#bytes.length * 2);
      larger.set(this.#bytes);
      this.#bytes = larger;
    }
    this.#bytes[this.#length++] = byte;
  }
}

/** Reads one value. @param shapes asked for once something with keys is read */
export function readValue(bytes: Uint8Array, texts: Texts, shapes: () => string[][]): unknown {
  let at = 0;
  const head = (): number => {
    let [number, unit] = [0, 1];
    for (;;) {
      const byte = bytes[at++]!;
      number += (byte & 127) * unit;
      if (byte < 128) return number;
      unit *= 128;
    }
  };
  const value = (): unknown => {
    const first = head();
    const amount = Math.floor(first / 8);
    switch (first % 8) {
      case FALSE:
      case TRUE:
        return first % 8 === TRUE;
      case WHOLE:
        return amount;
      case NUMBER:
        at += 8;
        return new Float64Array(bytes.slice(at - 8, at).buffer)[0];
      case TEXT:
        return texts.at(amount);
      case LIST:
        return Array.from({ length: amount }, value);
      case OBJECT: {
        const read: Record<string, unknown> = {};
        for (const key of shapes()[amount]!) read[key] = value();
        return read;
      }
      default:
        return null;
    }
  };
  return value();
}
