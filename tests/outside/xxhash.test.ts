import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import xxhash from 'xxhash-wasm';
import { checksum } from '../../src/pack/compiled/checksum';

// The check sum of compiled packs is XXH32: held to xxhash-wasm 1.1.0, which is xxHash's own C code compiled.
const { h32Raw } = await xxhash();

describe('the check sum', () => {
  it.each(Array.from({ length: 68 }, (_, length) => length))('of %i bytes is XXH32', (length) => {
    const bytes = Uint8Array.from({ length }, (_, i) => (i * 151 + 7) & 255);
    expect(checksum(bytes)).toBe(h32Raw(bytes, 0));
  });

  it('of any bytes, wherever they begin in a buffer, is XXH32', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), fc.nat(20), (bytes, from) => {
        const part = bytes.subarray(Math.min(from, bytes.length));
        expect(checksum(part)).toBe(h32Raw(part, 0));
      }),
      { numRuns: 1000 },
    );
  });
});
