import { createDecipheriv, createHash, createPrivateKey, pbkdf2Sync, sign as signInNode } from 'node:crypto';
import { expect, it } from 'vitest';
import { fingerprintOf } from '../../src/sharing/seal/fingerprint';
import { makeKeys } from '../../src/sharing/seal/keys';
import { sign } from '../../src/sharing/seal/signature';

/*
 * Whoever has a backup and its passphrase needs no program of ours: what the file says of itself (PBKDF2 of RFC 8018 with
 * HMAC-SHA-256, AES-256-GCM of NIST SP 800-38D, PKCS #8) is enough for any library. Here it is OpenSSL, by Node's own
 * functions, and not the WebCrypto that made the file.
 */
it('a backup opens with OpenSSL, and its key signs as the browser’s does', async () => {
  const passphrase = 'N\u00e4hmaschine im Keller';
  const { keys, backup } = await makeKeys(passphrase);
  const { wrapped, ...said } = JSON.parse(backup);
  const bytes = (text: string): Buffer => Buffer.from(text, 'base64url');
  const key = pbkdf2Sync(passphrase, bytes(said.kdf.salt), said.kdf.rounds, 32, 'sha256');
  const decipher = createDecipheriv('aes-256-gcm', key, bytes(said.cipher.iv));
  const sealed = bytes(wrapped);
  // Keys in this file's objects are in order already, so that plain JSON is the canonical form.
  decipher.setAAD(Buffer.from(JSON.stringify(said)));
  decipher.setAuthTag(sealed.subarray(-16));
  const pkcs8 = Buffer.concat([decipher.update(sealed.subarray(0, -16)), decipher.final()]);
  const privateKey = createPrivateKey({ key: pkcs8, format: 'der', type: 'pkcs8' });
  const signed = signInNode(null, Buffer.from('bedplate proposal 1\nwords'), privateKey);
  expect(signed.toString('base64url')).toBe(await sign('proposal', 'words', keys));
});

/* The letters are those of base32 in RFC 4648, section 6, table 3, in lower case; the arithmetic here is done in one number. */
it('a fingerprint is the first 130 bits of the key’s SHA-256 in base32', async () => {
  for (const fill of [0, 1, 127, 255]) {
    const key = Buffer.alloc(32, fill);
    const hash = BigInt(`0x${createHash('sha256').update(key).digest('hex')}`);
    const letters = Array.from({ length: 26 }, (_, i) => {
      return 'ABCDEFGHIJKLMNOPQRSTUVWXYZ234567'[Number((hash >> BigInt(256 - 5 * (i + 1))) & 31n)];
    });
    expect(await fingerprintOf(key.toString('base64url'))).toBe(letters.join('').toLowerCase());
  }
});
