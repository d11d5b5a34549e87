/**
 * Tells by its hash that a key isn't there: a bit is set for each that is, so that it says yes to all of those, and to
 * about one in ten of the others.
 */
export class Sieve {
  readonly #bits: Int32Array;
  readonly #most: number;

  /** @param hashes of the keys that are there */
  constructor(hashes: readonly number[]) {
    const words = 2 ** Math.ceil(Math.log2(Math.max(1, (hashes.length * BITS_FOR_EACH) / 32)));
    this.#bits = new Int32Array(words);
    this.#most = words * 32 - 1;
    for (const hash of hashes) this.#bits[(hash & this.#most) >>> 5]! |= 1 << (hash & 31);
  }

  may(hash: number): boolean {
    return (this.#bits[(hash & this.#most) >>> 5]! & (1 << (hash & 31))) !== 0;
  }
}

const BITS_FOR_EACH = 8;
