import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openPackFile } from '../../../src/sharing/open-file';
import { fingerprintOf, sealPack } from '../../../src/sharing/seal/seal';

const plain = readFileSync(new URL('../../../src/pack/shipped/trade.json', import.meta.url), 'utf8');
const keys = () => crypto.subtle.generateKey('Ed25519', true, ['sign', 'verify']) as Promise<CryptoKeyPair>;

describe('a pack file', () => {
  it('that is plain JSON opens unsealed', async () => {
    const opened = await openPackFile(plain);
    expect(opened.pack?.about.id).toBe('trade');
    expect(opened).toMatchObject({ sealedBy: null });
  });

  it('that is sealed opens with the fingerprint of the key that sealed it', async () => {
    const pair = await keys();
    const opened = await openPackFile(await sealPack(JSON.parse(plain), pair));
    const raw = new Uint8Array(await crypto.subtle.exportKey('raw', pair.publicKey));
    expect(opened).toMatchObject({ sealedBy: await fingerprintOf(raw) });
    expect(opened.pack?.about.id).toBe('trade');
  });

  it('that was changed after sealing is refused, wherever the change is', async () => {
    const covers = { thing: 'machine', words: ['machine'] };
    const about = { id: 'a', title: 'A', edition: 1, licence: 'CC0-1.0', language: 'en', covers };
    const sealed = await sealPack({ schema: 1, about }, await keys());
    expect((await openPackFile(sealed)).pack?.about.id).toBe('a');
    for (let i = 0; i < sealed.length; i++) {
      const changed = sealed.slice(0, i) + (sealed[i] === 'x' ? 'y' : 'x') + sealed.slice(i + 1);
      const opened = await openPackFile(changed);
      expect(opened.pack, `character ${i}`).toBeUndefined();
    }
  });

  it('that another key sealed in the same words is another seal', async () => {
    const [one, two] = [await keys(), await keys()];
    const body = (await sealPack({ a: 1 }, one)).split('\n')[1]!;
    const head = (await sealPack({ a: 2 }, two)).split('\n')[0]!;
    const opened = await openPackFile(`${head}\n${body}`);
    expect(opened.issues?.[0]?.what).toBe('the seal does not fit what follows it');
  });
});
