import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checksum } from '../../../../src/pack/compiled/checksum';

const PRIME = 16_380n * 2n ** 16n - 1n;

/** By its definition: what is left of every second word, the lowest first, each worth 2^16 of the one before, by the prime. */
function remainder(words: readonly number[], sum: bigint): bigint {
  const worth = power(2n ** 16n, PRIME - 2n);
  return words.reduce((before, word) => (before * worth + BigInt(word)) % PRIME, sum);
}

function power(base: bigint, exponent: bigint): bigint {
  let [result, square] = [1n, base];
  for (let left = exponent; left > 0n; left >>= 1n) {
    if (left & 1n) result = (result * square) % PRIME;
    square = (square * square) % PRIME;
  }
  return result;
}

/** The two sums that may stand in a check sum: it tells them apart where the second is known. */
function sums(bytes: Uint8Array): { even: number; odd: number } {
  const words = [...new Uint16Array(bytes.slice().buffer)];
  const of = (which: number) =>
    Number(
      remainder(
        words.filter((_, i) => i % 2 === which),
        1n,
      ),
    );
  return { even: of(0), odd: of(1) };
}

/** A sum may stand as itself or with the prime once more, where that is below 2^30. */
const ways = (sum: number) => [sum, sum + Number(PRIME)];

const fours = fc
  .uint8Array({ maxLength: 75 })
  .map((bytes) => Uint8Array.from({ length: bytes.length * 4 }, (_, i) => bytes[i >> 2]! * (i + 7)));

describe('the check sum', () => {
  it('is what is left of a division by a prime', () => {
    expect(power(3n, PRIME - 1n)).toBe(1n);
    fc.assert(
      fc.property(fours, (bytes) => {
        const { even, odd } = sums(bytes);
        const may = ways(even).flatMap((a) => ways(odd).map((b) => (a + Math.imul(b, 0x9e3779b1)) >>> 0));
        expect(may).toContain(checksum(bytes));
      }),
      { numRuns: 300 },
    );
  });

  it('is the same wherever the bytes lie', () => {
    fc.assert(
      fc.property(fours, fc.nat(9), (bytes, from) => {
        const longer = new Uint8Array(2 * from + bytes.length);
        longer.set(bytes, 2 * from);
        expect(checksum(longer.subarray(2 * from))).toBe(checksum(bytes));
      }),
    );
  });

  const page = Uint8Array.from({ length: 8192 }, (_, i) => (i * i * 7) >> 4);
  const whole = checksum(page);
  const changed = (change: (bytes: Uint8Array) => void) => {
    const bytes = page.slice();
    change(bytes);
    return checksum(bytes);
  };

  it('notices each bit of a page, and each stretch that is blank or is gone and filled up', () => {
    for (let bit = 0; bit < 8192 * 8; bit += 5)
      expect(changed((bytes) => (bytes[bit >> 3]! ^= 1 << (bit % 8)))).not.toBe(whole);
    for (let at = 0; at < 8192; at += 64)
      for (const fill of [0, 255]) expect(changed((bytes) => bytes.fill(fill, at, at + 512))).not.toBe(whole);
    for (let at = 0; at < 8192 - 64; at += 64)
      expect(changed((bytes) => bytes.copyWithin(at, at + 32))).not.toBe(whole);
  });

  it('notices two bits, wherever they are', () => {
    const zero = new Uint8Array(128);
    const none = checksum(zero);
    const unnoticed: [bit: number, other: number][] = [];
    for (let bit = 0; bit < 32; bit++)
      for (let other = bit + 1; other < 1024; other++) {
        const both = zero.slice();
        both[bit >> 3]! ^= 1 << (bit % 8);
        both[other >> 3]! ^= 1 << (other % 8);
        if (checksum(both) === none) unnoticed.push([bit, other]);
      }
    expect(unnoticed).toEqual([]);
  });

  it('notices words that change places', () => {
    for (let at = 0; at < 4096 - 6; at += 6) {
      const swapped = changed((bytes) => {
        const words = new Uint16Array(bytes.buffer);
        [words[at], words[at + 5]] = [words[at + 5]!, words[at]! ^ 1];
      });
      expect(swapped).not.toBe(whole);
    }
  });
});
