import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { auditCommand } from '../../../src/cli/commands/audit';
import { withSealedPacks } from '../../../src/cli/sealed-packs';
import type { Pack } from '../../../src/pack/schema/index';
import { fingerprintOf, spokenFingerprint } from '../../../src/sharing/seal/fingerprint';
import { founded, sealPack } from '../../../src/sharing/seal/seal';
import { publicKeyOf } from '../../../src/sharing/seal/signature';

const folder = mkdtempSync(join(tmpdir(), 'bedplate-'));
afterAll(() => rmSync(folder, { recursive: true }));
const put = (name: string, text: string): string => {
  writeFileSync(join(folder, name), text);
  return join(folder, name);
};

const keys = (await crypto.subtle.generateKey('Ed25519', true, ['sign', 'verify'])) as CryptoKeyPair;
const plain = JSON.parse(readFileSync('fixtures/packs/grindlewade-circle.json', 'utf8')) as Pack;
const club = await founded(plain, keys);
const sealed = await sealPack(club, keys);
const draft = put('draft.json', JSON.stringify({ title: 'Grindlewade Cressiter sewing machine', description: '' }));
const audit = withSealedPacks(auditCommand);

describe('a command that is given a sealed pack', () => {
  it.each(['--pack FILE', '--pack=FILE'])('%s proves the seal, and says whose it is', async (how) => {
    const options = how.replace('FILE', put('club.pack', sealed)).split(' ');
    const { packs, claimedModel } = JSON.parse(await audit(['--draft', draft, '--json', ...options]));
    const sealedBy = spokenFingerprint(await fingerprintOf(await publicKeyOf(keys)));
    expect(packs).toContainEqual({ id: club.about.id, edition: club.about.edition, sealedBy });
    expect(claimedModel).toBe(`${club.about.id}/cressiter`);
  });

  it('takes none that was changed, and says so in one line', async () => {
    const changed = put('changed.pack', sealed.replace('Cressiter', 'Cressiten'));
    await expect(audit(['--draft', draft, '--pack', changed])).rejects.toThrow(
      /changed\.pack: the seal does not fit what follows it, expected the very bytes that the keeper sealed$/,
    );
  });

  it('takes plain ones as before, and complains of missing ones as before', async () => {
    const path = put('plain.json', JSON.stringify(plain));
    const { packs } = JSON.parse(await audit(['--draft', draft, '--json', '--pack', path]));
    expect(packs).toContainEqual({ id: plain.about.id, edition: plain.about.edition, sealedBy: null });
    await expect(audit(['--draft', draft, '--pack', 'none.json'])).rejects.toThrow('none.json: no such file');
  });
});
