import { describe, expect, it } from 'vitest';
import { hashOf } from '../../../src/text/hash';
import { Sieve, sieveBits } from '../../../src/text/sieve';

const hashes = (from: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => hashOf(`word${from + i}`));

describe('a sieve', () => {
  it.each([0, 1, 3, 500, 20_000])('lets through all that are there, of %d', (count) => {
    const there = hashes(0, count);
    const sieve = new Sieve(sieveBits(there));
    expect(there.every((hash) => sieve.may(hash) && sieve.may(hash | 0))).toBe(true);
  });

  it('keeps back most that aren’t', () => {
    const sieve = new Sieve(sieveBits(hashes(0, 5_000)));
    expect(hashes(5_000, 5_000).filter((hash) => sieve.may(hash)).length).toBeLessThan(1_000);
  });

  it('of nothing keeps back everything', () => {
    const sieve = new Sieve(sieveBits([]));
    expect(hashes(0, 100).some((hash) => sieve.may(hash))).toBe(false);
  });
});
