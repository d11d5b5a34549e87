import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { contentHash } from '../../src/pack/compiled/content-hash';

/*
 * SHA-256 as packs are known by, against the examples that NIST published for FIPS 180-2 and 180-4 ("abc", 448 bits, a
 * million times "a"; their values from memory, a slip would fail), and against OpenSSL's in Node for any text.
 */
it.each([
  ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
  ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
  [
    'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
    '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
  ],
  ['a'.repeat(1_000_000), 'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0'],
])('the hash of a published message is as published', async (message, hash) => {
  expect(await contentHash(message)).toBe(hash);
});

it('any text has the hash of its UTF-8', async () => {
  await fc.assert(
    fc.asyncProperty(fc.string({ unit: 'grapheme' }), async (text) => {
      expect(await contentHash(text)).toBe(createHash('sha256').update(text, 'utf8').digest('hex'));
    }),
  );
});
