import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import type { KeptKnown } from '../../../../src/keep/schema';
import { contentHash } from '../../../../src/pack/compiled/content-hash';
import type { Pack } from '../../../../src/pack/schema/index';
import type { OfferStep } from '../../../../src/session/following/offer-told';
import { type Here, offering } from '../../../../src/session/following/offering';
import { founded, sealPack } from '../../../../src/sharing/seal/seal';
import { type FileToPublish, publication } from '../../../../src/sharing/subscribe/publication';

const demo = JSON.parse(readFileSync('fixtures/packs/grindlewade-circle.json', 'utf8')) as Pack;
const ADDRESS = 'https://packs.example/clubs/grindlewade-circle.notice.json';

let keys: CryptoKeyPair;
let own: Pack;
const edition = (number: number, change: Partial<Pack> = {}): Pack => ({
  ...own,
  ...change,
  about: { ...own.about, edition: number },
});
const seal = (pack: Pack) => sealPack(pack, keys);
beforeAll(async () => {
  keys = (await crypto.subtle.generateKey('Ed25519', true, ['sign', 'verify'])) as CryptoKeyPair;
  own = await founded(demo, keys);
});

const body = (sealed: string) => sealed.slice(sealed.indexOf('\n') + 1);
async function hereOf(pack: Pack): Promise<Here> {
  const json = body(await seal(pack));
  return { edition: pack.about.edition, json, hash: await contentHash(json) };
}
async function knownOf(pack: Pack): Promise<KeptKnown> {
  const { edition, hash } = await hereOf(pack);
  const line = JSON.parse((await seal(pack)).split('\n')[0] ?? '');
  return { id: pack.about.id, key: line.key, edition, hash, next: null, earlier: [] };
}

interface World {
  here?: Here;
  known?: KeptKnown;
  followed?: boolean;
  shipped?: boolean;
}

/** Looks at a host that holds these files. */
async function look(files: readonly FileToPublish[], { here, known, followed = false, shipped = false }: World = {}) {
  const asked: string[] = [];
  const steps: OfferStep['state'][] = [];
  const name = (address: string) => address.slice('https://packs.example/clubs/'.length);
  const offered = await offering(ADDRESS, followed ? own.about.id : null, {
    async fetchText(address, most, progress) {
      asked.push(name(address).replace(/^[0-9a-f]{64}/, '#'));
      const file = files.find((each) => each.name === name(address));
      if (!file) return { ok: false, problem: 'missing' };
      const bytes = Buffer.byteLength(file.text);
      progress(bytes);
      return bytes > most ? { ok: false, problem: 'too-large' } : { ok: true, text: file.text, bytes };
    },
    here: async () => here ?? null,
    stood: {
      shelf: shipped ? [{ id: own.about.id, edition: 1, shipped: true, sealedBy: null }] : [],
      known: new Map(known ? [[known.id, known]] : []),
    },
    tell: ({ state }) => void steps.push(state),
  });
  return { offered, asked, steps };
}

const told = ({ offered }: Awaited<ReturnType<typeof look>>) => {
  if (offered.state !== 'offered') throw new Error(JSON.stringify(offered));
  return offered.told;
};
const NOTICE = 'grindlewade-circle.notice.json';

describe('looking at what an address publishes', () => {
  it('for the first time fetches the whole, proves it, and says what it is', async () => {
    const looked = await look(await publication(await seal(edition(1)), []));
    expect(looked.asked).toEqual([NOTICE, '#.pack']);
    expect(told(looked)).toMatchObject({ here: null, isHere: false, changes: null });
    expect(told(looked).about.sealedBy).toMatch(/^(\d{4} ){9}\d{4}$/);
    expect(looked.offered).toMatchObject({ offer: { judgedAgainst: null, replaces: null, remember: { edition: 1 } } });
  });

  it('of a newer edition fetches what changed alone, and says what that is', async () => {
    const [model, ...models] = own.models!;
    const next = edition(2, { models: [...models, { ...model!, label: 'Called otherwise' }] });
    const files = await publication(await seal(next), [edition(1)]);
    const world = { here: await hereOf(edition(1)), known: await knownOf(edition(1)), followed: true };
    const looked = await look(files, world);
    expect(looked.asked).toEqual([NOTICE, '#.changes']);
    expect(told(looked)).toMatchObject({ here: 1, about: { edition: 2 } });
    expect(told(looked).changes?.counts.changed).toBe(1);
    expect(told(looked).bytes.fetched).toBeLessThan(told(looked).bytes.whole / 5);
    expect(looked.offered).toMatchObject({ offer: { text: body(files[0]!.text), replaces: world.here.hash } });
  });

  it.each([
    ['is missing', () => null],
    ['is another file', (file: FileToPublish) => ({ ...file, text: `${file.text} ` })],
    ['is for another text', (file: FileToPublish) => file],
  ])('falls back to the whole where the update %s', async (what, change) => {
    const files = await publication(await seal(edition(2)), [edition(1)]);
    const changed = files.flatMap((file) => (file.name.endsWith('.changes') ? (change(file) ?? []) : file));
    const here = what.includes('another text') ? await hereOf(edition(1, { cautions: [] })) : await hereOf(edition(1));
    const looked = await look(changed, { here, known: await knownOf(edition(1)), followed: true });
    expect(looked.asked).toEqual([NOTICE, '#.changes', '#.pack']);
    expect(told(looked).about.edition).toBe(2);
  });

  it('with nothing new says so, and fetches the notice and the file alone', async () => {
    const files = await publication(await seal(edition(1)), []);
    const world = { here: await hereOf(edition(1)), known: await knownOf(edition(1)) };
    expect((await look(files, { ...world, followed: true })).offered).toEqual({ state: 'nothing-new', edition: 1 });
    // Who isn't following yet can begin to.
    expect(told(await look(files, world))).toMatchObject({ isHere: true, changes: null });
  });

  it('refuses an edition that is earlier than one that was here, and doesn’t fetch it', async () => {
    const files = await publication(await seal(edition(1)), []);
    const looked = await look(files, { known: await knownOf(edition(3)) });
    expect(looked.offered).toEqual({ state: 'failed', problem: 'older' });
    expect(looked.asked).toEqual([NOTICE]);
  });

  it('shows two texts under one number as what they are', async () => {
    const files = await publication(await seal(edition(1, { cautions: [] })), []);
    const { offered } = await look(files, { here: await hereOf(edition(1)), known: await knownOf(edition(1)) });
    expect(offered).toMatchObject({ state: 'refused', issues: [{ what: expect.stringContaining('edition 1') }] });
  });

  it('refuses another key’s seal, and an unsealed pack in the place of a sealed one', async () => {
    const files = await publication(await seal(edition(2)), []);
    const known = { ...(await knownOf(edition(1))), key: 'x'.repeat(43) };
    expect((await look(files, { known })).offered.state).toBe('refused');
    const plain = await publication(`\n${JSON.stringify(edition(2))}`, []);
    expect((await look(plain, { known: await knownOf(edition(1)) })).offered.state).toBe('refused');
  });

  it.each([
    ['no notice', [{ name: NOTICE, text: '<html>' }], 'no-notice'],
    ['nothing', [], 'missing'],
  ])('says that there is %s', async (_what, files, problem) => {
    expect((await look(files)).offered).toEqual({ state: 'failed', problem });
  });

  it('takes no file that is another than the notice names', async () => {
    const files = await publication(await seal(edition(1)), []);
    const swapped = files.map((file) =>
      file.name.endsWith('.pack') ? { ...file, text: file.text.replace('a', 'b') } : file,
    );
    expect((await look(swapped)).offered).toEqual({ state: 'failed', problem: 'other-bytes' });
    const longer = files.map((file) => (file.name.endsWith('.pack') ? { ...file, text: `${file.text} ` } : file));
    expect((await look(longer)).offered).toEqual({ state: 'failed', problem: 'too-large' });
    const lied = files.map((file) =>
      file.name === NOTICE ? { ...file, text: file.text.replace('"edition":1', '"edition":9') } : file,
    );
    expect((await look(lied)).offered).toEqual({ state: 'failed', problem: 'not-as-said' });
  });

  it('takes no other pack for the one that is followed, and none for one that came with the program', async () => {
    const other = await founded({ ...demo, about: { ...demo.about, id: 'other' } }, keys);
    const files = await publication(await sealPack(other, keys), []);
    const renamed = files.map((file) => (file.name === 'other.notice.json' ? { ...file, name: NOTICE } : file));
    expect((await look(renamed, { followed: true })).offered).toEqual({ state: 'failed', problem: 'other-pack' });
    const ours = await publication(await seal(edition(1)), []);
    expect((await look(ours, { shipped: true })).offered).toEqual({ state: 'failed', problem: 'is-shipped' });
  });
});
