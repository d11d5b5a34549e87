import 'fake-indexeddb/auto';
import { expect, it } from 'vitest';
import { changeDesk, keepEdition, keeperKeys, type NewEdition, readDesk } from '../../../src/keep/desks';
import { readKnown } from '../../../src/keep/known';
import { changeLayer, readLayers } from '../../../src/keep/layers';
import { putObservations, readObservations } from '../../../src/keep/observations';
import { type Database, openKeep } from '../../../src/keep/open';
import { putPacks, readShelf, readText, switchPack } from '../../../src/keep/packs';
import { readSubscriptions } from '../../../src/keep/subscriptions';

const pack = (id: string, edition: number) => ({ id, edition, installedAt: '', hash: `${edition}`, text: '{}' });
const known = (id: string, edition: number) => ({ id, key: 'k', edition, hash: `${edition}`, next: null, earlier: [] });
const FILES = [{ name: 'a.pack', text: 'a' }];
const newEdition = (id: string, edition: number, keys: CryptoKeyPair): NewEdition => {
  return {
    pack: { ...pack(id, edition), text: `{"edition":${edition}}` },
    known: known(id, edition),
    keys,
    files: FILES,
  };
};
/** What an edition is made of, as it stands now. */
async function standing(db: Database, id: string) {
  const [text, desk] = [await readText(db, id), await readDesk(db, id)];
  if (!text.ok || !desk.ok) throw new Error('not read');
  return { text: text.value ?? '', desk: desk.value };
}
const newKeys = () => crypto.subtle.generateKey('Ed25519', false, ['sign', 'verify']) as Promise<CryptoKeyPair>;

it('two windows at one desk lose no decision of each other’s', async () => {
  const keep = await openKeep('desks-two');
  if (!keep.ok) throw new Error(keep.trouble);
  const add = (slot: string) =>
    changeDesk(keep.value, 'club', (desk) => ({ ...desk, decisions: [...desk.decisions, [slot, 'yes', '']] }));
  await Promise.all([add('a'), add('b')]);
  const desk = await readDesk(keep.value, 'club');
  expect(desk.ok && desk.value.decisions.map(([slot]) => slot).sort()).toEqual(['a', 'b']);
  keep.value.close();
});

it('an edition is kept with its key and its files, or nothing of it is, at whatever write the space runs out', async () => {
  const { put } = IDBObjectStore.prototype;
  const keys = await newKeys();
  for (let most = 0; most < 5; most += 1) {
    const keep = await openKeep(`desks-full-${most}`);
    if (!keep.ok) throw new Error(keep.trouble);
    const db = keep.value;
    await putPacks(db, [pack('club', 1)]);
    await changeDesk(db, 'club', (desk) => ({ ...desk, proposals: ['one'] }));
    const from = await standing(db, 'club');
    let left = most;
    IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...args: Parameters<typeof put>) {
      if (left === 0) throw new DOMException('', 'QuotaExceededError');
      left -= 1;
      return put.apply(this, args);
    };
    try {
      const kept = await keepEdition(db, from, newEdition('club-key', 2, keys));
      expect(kept).toEqual({ ok: false, trouble: 'full' });
    } finally {
      IDBObjectStore.prototype.put = put;
    }
    const state = async () => {
      const [shelf, old, key] = [await readShelf(db), await readDesk(db, 'club'), await keeperKeys(db, 'club-key')];
      return [
        shelf.ok && shelf.value.packs.map(({ id }) => id),
        old.ok && old.value.proposals,
        key.ok && key.value !== null,
      ];
    };
    expect(await state()).toEqual([['club'], ['one'], false]);
    await keepEdition(db, from, newEdition('club-key', 2, keys));
    expect(await state()).toEqual([['club-key'], [], true]);
    const desk = await readDesk(db, 'club-key');
    expect(desk.ok && desk.value.published).toEqual({ edition: 2, files: FILES });
    db.close();
  }
});

it('two windows that publish at once make one edition, and no second pack of the first', async () => {
  const keep = await openKeep('desks-twice');
  if (!keep.ok) throw new Error(keep.trouble);
  const db = keep.value;
  await putPacks(db, [pack('club', 1)]);
  const from = await standing(db, 'club');
  const [one, two] = [await newKeys(), await newKeys()];
  const first = await keepEdition(db, from, newEdition('club-one', 2, one));
  expect(first).toEqual({ ok: true, value: 'kept' });
  expect(await keepEdition(db, from, newEdition('club-two', 2, two))).toEqual({ ok: true, value: 'stale' });
  const then = await standing(db, 'club-one');
  await keepEdition(db, then, newEdition('club-one', 3, one));
  expect(await keepEdition(db, then, newEdition('club-one', 3, one))).toEqual({ ok: true, value: 'stale' });
  const shelf = await readShelf(db);
  expect(shelf.ok && shelf.value.packs.map(({ id, edition }) => [id, edition])).toEqual([['club-one', 3]]);
  db.close();
});

it('what another window decides or brings while an edition is sealed is not lost, and the edition is not kept', async () => {
  const keep = await openKeep('desks-meanwhile');
  if (!keep.ok) throw new Error(keep.trouble);
  const db = keep.value;
  const keys = await newKeys();
  await putPacks(db, [pack('club', 1)]);
  const from = await standing(db, 'club');
  await changeDesk(db, 'club', (desk) => ({ ...desk, proposals: ['late'] }));
  expect(await keepEdition(db, from, newEdition('club-key', 2, keys))).toEqual({ ok: true, value: 'stale' });
  expect((await standing(db, 'club')).desk.proposals).toEqual(['late']);
  expect(await keeperKeys(db, 'club-key')).toEqual({ ok: true, value: null });
  db.close();
});

it('no edition is kept whose number was seen already, whatever stands here', async () => {
  const keep = await openKeep('desks-back');
  if (!keep.ok) throw new Error(keep.trouble);
  const db = keep.value;
  await putPacks(db, [pack('club-key', 5)], [known('club-key', 7)]);
  const from = await standing(db, 'club-key');
  const keys = await newKeys();
  expect(await keepEdition(db, from, newEdition('club-key', 6, keys))).toEqual({ ok: true, value: 'stale' });
  expect(await keepEdition(db, from, newEdition('club-key', 8, keys))).toEqual({ ok: true, value: 'kept' });
  const remembered = await readKnown(db);
  expect(remembered.ok && remembered.value.get('club-key')?.edition).toBe(8);
  db.close();
});

it('sealed for the first time a pack goes on under its new id with what the user has made of it', async () => {
  const keep = await openKeep('desks-first');
  if (!keep.ok) throw new Error(keep.trouble);
  const db = keep.value;
  await putPacks(db, [pack('club', 1)]);
  const base = { edition: 1, hash: '1' };
  await changeLayer(db, 'club', (layer) => ({
    ...layer,
    base,
    changes: [{ do: 'change', part: 'models', entry: 'a' }],
  }));
  await switchPack(db, 'club', false);
  const seen = { kind: 'asked', amount: '10', currency: 'EUR', date: '2026-01-02' } as const;
  await putObservations(db, [
    { ...seen, id: 'p1', model: 'club/a' },
    { ...seen, id: 'p2', model: 'clubs/a' },
  ]);
  await db.put('subscriptions', {
    ...{ id: 'club', address: 'https://example.org/a.notice.json', since: '', triedAt: null, checkedAt: null, due: 0 },
    ...{ failures: 0, finding: { state: 'same' }, file: { edition: 1, sha256: '' }, left: null },
  });
  await keepEdition(db, await standing(db, 'club'), newEdition('club-key', 2, await newKeys()));
  const [layers, shelf] = [await readLayers(db), await readShelf(db)];
  expect(layers.ok && [...layers.value.values()]).toMatchObject([{ id: 'club-key', base, changes: [{ entry: 'a' }] }]);
  expect(shelf.ok && [...shelf.value.switches]).toEqual([['club-key', false]]);
  const prices = await readObservations(db);
  expect(prices.ok && prices.value.map(({ model }) => model).sort()).toEqual(['club-key/a', 'clubs/a']);
  expect(await readSubscriptions(db)).toEqual({ ok: true, value: [] });
  db.close();
});
