import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Pack } from '../../../src/pack/schema/index';
import { openPackFile } from '../../../src/sharing/open-file';
import { fingerprintOf, spokenFingerprint } from '../../../src/sharing/seal/fingerprint';
import { founded, sealPack } from '../../../src/sharing/seal/seal';
import { publicKeyOf } from '../../../src/sharing/seal/signature';
import { smallPack } from '../pack/support/packs';

const plain = readFileSync(new URL('../../../src/pack/shipped/trade.json', import.meta.url), 'utf8');
const keys = () => crypto.subtle.generateKey('Ed25519', true, ['sign', 'verify']) as Promise<CryptoKeyPair>;

describe('a pack file', () => {
  it('that is plain JSON opens unsealed', async () => {
    const opened = await openPackFile(plain);
    expect(opened.pack?.about.id).toBe('trade');
    expect(opened).toMatchObject({ sealedBy: null, seal: null });
  });

  it('that is sealed opens with the fingerprint of the key that sealed it', async () => {
    const pair = await keys();
    const own = await founded(JSON.parse(plain) as Pack, pair);
    const opened = await openPackFile(await sealPack(own, pair));
    const fingerprint = await fingerprintOf(await publicKeyOf(pair));
    expect(opened).toMatchObject({ sealedBy: spokenFingerprint(fingerprint), seal: { fingerprint } });
    expect(opened.pack?.about.id).toBe(`trade-${fingerprint}`);
  });

  it('that was changed after sealing is refused, wherever the change is', async () => {
    const pair = await keys();
    const sealed = await sealPack(await founded(smallPack(), pair), pair);
    expect((await openPackFile(sealed)).pack?.about.title).toBe('A small pack');
    for (let i = 0; i < sealed.length; i++) {
      const changed = sealed.slice(0, i) + (sealed[i] === 'x' ? 'y' : 'x') + sealed.slice(i + 1);
      const opened = await openPackFile(changed);
      expect(opened.pack, `character ${i}`).toBeUndefined();
    }
  });

  it('that another key sealed in the same words is another seal', async () => {
    const [one, two] = [await keys(), await keys()];
    const body = (await sealPack(await founded(smallPack(), one), one)).split('\n')[1]!;
    const head = (await sealPack(await founded(smallPack(), two), two)).split('\n')[0]!;
    const opened = await openPackFile(`${head}\n${body}`);
    expect(opened.issues?.[0]?.what).toBe('the seal does not fit what follows it');
  });

  it('in which a key stands twice is refused, sealed or not', async () => {
    const twice = JSON.stringify(smallPack()).replace('"licence"', '"edition":9,"licence"');
    const { issues } = await openPackFile(twice);
    expect(issues?.[0]?.what).toMatch(/^the key "edition" stands twice in one object, at line 1, column \d+$/);
  });

  it('that is unsealed does not open under the id of a sealed pack', async () => {
    const own = await founded(smallPack(), await keys());
    const opened = await openPackFile(JSON.stringify(own));
    expect(opened.issues?.[0]).toMatchObject({
      path: 'about.id',
      expected: expect.stringContaining('the sealed file'),
    });
  });
});
