/**
 * Tells by its hash that a key isn't there: a bit is set for each that is, so that it says yes to all of those, and to
 * about one in ten of the others.
 */
export class Sieve {
  readonly #bits: Uint32Array;
  readonly #most: number;

  /** @param bits from `sieveBits` */
  constructor(bits: Uint32Array) {
    this.#bits = bits;
    this.#most = bits.length * 32 - 1;
  }

  may(hash: number): boolean {
    return (this.#bits[(hash & this.#most) >>> 5]! & (1 << (hash & 31))) !== 0;
  }
}

/** @param hashes of the keys that are there */
export function sieveBits(hashes: readonly number[]): Uint32Array<ArrayBuffer> {
  const words = 2 ** Math.ceil(Math.log2(Math.max(1, (hashes.length * BITS_FOR_EACH) / 32)));
  const bits = new Uint32Array(words);
  const most = words * 32 - 1;
  for (const hash of hashes) bits[(hash & most) >>> 5]! |= 1 << (hash & 31);
  return bits;
}

const BITS_FOR_EACH = 8;
