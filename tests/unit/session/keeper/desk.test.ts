import { beforeAll, describe, expect, it } from 'vitest';
import { contentHash } from '../../../../src/pack/compiled/content-hash';
import type { Pack } from '../../../../src/pack/schema/index';
import { deskTold, openDesk } from '../../../../src/session/keeper/desk';
import type { Change } from '../../../../src/sharing/propose/changes';
import type { Decision } from '../../../../src/sharing/propose/merge-proposals';
import { writeProposal } from '../../../../src/sharing/propose/proposal';
import { smallPack } from '../../pack/support/packs';

const pack = smallPack({ models: [{ id: 'plain', label: 'Plain', names: ['Plain'], number: 100 }] });
let member: CryptoKeyPair;
beforeAll(async () => {
  member = (await crypto.subtle.generateKey('Ed25519', true, ['sign', 'verify'])) as CryptoKeyPair;
});
async function proposal(name: string, now: number): Promise<string> {
  const change = { do: 'change', part: 'models', entry: 'plain', field: ['number'], was: 100, now } as Change;
  const base = { edition: 1, hash: await contentHash(JSON.stringify(pack)) };
  return writeProposal({ pack: pack.about.id, base, author: { name }, note: '', changes: [change] }, member);
}
const desk = (proposals: string[], decisions: [string, Decision, string][] = []) => {
  return { id: pack.about.id, proposals, decisions, published: null };
};
async function told(now: Pack, kept: ReturnType<typeof desk>) {
  const opened = await openDesk(now, kept);
  const shown = deskTold(now, opened, { key: 'none', next: 2 }, null);
  return { ...shown, row: shown.rows[0]!, number: opened.merged.pack.models?.[0]?.number };
}
const ACCEPT: Decision = { do: 'accept', offer: 0 };

describe('a decision at a desk', () => {
  it('holds for what was seen: one more proposal there is another question', async () => {
    const [eight, seven] = [await proposal('One', 8), await proposal('Two', 7)];
    const { row } = await told(pack, desk([eight]));
    const decided: [string, Decision, string][] = [[row.slot, ACCEPT, row.saw]];
    expect(await told(pack, desk([eight], decided))).toMatchObject({ undecided: 0, number: 8, row: { lapsed: false } });
    // By its place the first offer would be another one now, and nobody has accepted that.
    const later = await told(pack, desk([eight, seven], decided));
    expect(later).toMatchObject({ undecided: 1, number: 100, row: { decision: null, lapsed: true } });
    const again: [string, Decision, string][] = [[row.slot, { do: 'accept', offer: 1 }, later.row.saw]];
    expect(await told(pack, desk([eight, seven], again))).toMatchObject({ undecided: 0, number: 8 });
  });

  it('goes on where another member proposes the very same', async () => {
    const { row } = await told(pack, desk([await proposal('One', 8)]));
    const both = [await proposal('One', 8), await proposal('Two', 8)];
    expect(await told(pack, desk(both, [[row.slot, ACCEPT, row.saw]]))).toMatchObject({ undecided: 0, number: 8 });
  });

  it('lapses where the pack says something else there by now', async () => {
    const proposals = [await proposal('One', 8)];
    const { row } = await told(pack, desk(proposals));
    const newer: Pack = { ...pack, models: [{ ...pack.models![0]!, number: 50 }] };
    const kept = desk(proposals, [[row.slot, ACCEPT, row.saw]]);
    expect(await told(newer, kept)).toMatchObject({ undecided: 1, number: 50, row: { lapsed: true } });
  });
});
