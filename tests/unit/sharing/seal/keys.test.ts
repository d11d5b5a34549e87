import { describe, expect, it } from 'vitest';
import { canonicalJson } from '../../../../src/sharing/seal/canonical';
import { keyOfBackup, makeKeys, restoreKeys } from '../../../../src/sharing/seal/keys';
import { isSignedBy, publicKeyOf, sign } from '../../../../src/sharing/seal/signature';

const PASSPHRASE = 'bobbins under the bench';
const made = await makeKeys(PASSPHRASE);

describe('keys', () => {
  it('sign, and their private half stays where it is', async () => {
    const key = await publicKeyOf(made.keys);
    expect(await isSignedBy(key, await sign('proposal', 'a', made.keys), 'proposal', 'a')).toBe(true);
    expect(made.keys.privateKey.extractable).toBe(false);
    await expect(crypto.subtle.exportKey('pkcs8', made.keys.privateKey)).rejects.toThrow();
  });

  it('come back from their backup with the passphrase, and sign alike', async () => {
    const restored = await restoreKeys(made.backup, PASSPHRASE);
    if (restored.problem) throw new Error(restored.problem);
    expect(restored.keys.privateKey.extractable).toBe(false);
    expect(await publicKeyOf(restored.keys)).toBe(await publicKeyOf(made.keys));
    // Ed25519 signs the same text the same way each time.
    expect(await sign('seal', 'a', restored.keys)).toBe(await sign('seal', 'a', made.keys));
    expect(keyOfBackup(made.backup)).toBe(await publicKeyOf(made.keys));
  });

  it('of a passphrase with accents come back however these are written', async () => {
    const { backup } = await makeKeys('N\u00e4hmaschine im Keller');
    expect((await restoreKeys(backup, 'Na\u0308hmaschine im Keller')).problem).toBeUndefined();
  });

  it('do not come back with another passphrase, or from a changed file', async () => {
    expect(await restoreKeys(made.backup, `${PASSPHRASE}.`)).toEqual({ problem: 'passphrase' });
    const said = JSON.parse(made.backup);
    const other = JSON.parse((await makeKeys(PASSPHRASE)).backup);
    for (const parts of [
      { key: other.key },
      { wrapped: other.wrapped },
      { kdf: { ...said.kdf, salt: other.kdf.salt } },
      { cipher: other.cipher },
      { kdf: { ...said.kdf, rounds: 600_001 } },
    ])
      expect(await restoreKeys(canonicalJson({ ...said, ...parts })!, PASSPHRASE)).toEqual({ problem: 'passphrase' });
  });

  it('do not come from what is no backup, and nobody is kept waiting by one', async () => {
    const said = JSON.parse(made.backup);
    for (const text of [
      '',
      '{}',
      'null',
      canonicalJson({ ...said, backup: 2 })!,
      canonicalJson({ ...said, kdf: { ...said.kdf, rounds: 1 } })!,
      canonicalJson({ ...said, kdf: { ...said.kdf, rounds: 1e12 } })!,
      canonicalJson({ ...said, kdf: { ...said.kdf, salt: '' } })!,
      canonicalJson({ ...said, cipher: { ...said.cipher, iv: 'AA' } })!,
      canonicalJson({ ...said, key: 'AA' })!,
    ])
      expect(await restoreKeys(text, PASSPHRASE)).toEqual({ problem: 'form' });
  });

  it('are not made under a passphrase that is soon guessed', async () => {
    await expect(makeKeys('short')).rejects.toThrow(RangeError);
  });
});
