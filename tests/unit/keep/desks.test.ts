import 'fake-indexeddb/auto';
import { expect, it } from 'vitest';
import { changeDesk, keepEdition, keeperKeys, readDesk } from '../../../src/keep/desks';
import { openKeep } from '../../../src/keep/open';
import { putPacks, readShelf } from '../../../src/keep/packs';

const pack = (id: string, edition: number) => ({ id, edition, installedAt: '', hash: `${edition}`, text: '{}' });
const known = (id: string, edition: number) => ({ id, key: 'k', edition, hash: `${edition}`, next: null, earlier: [] });
const newKeys = () => crypto.subtle.generateKey('Ed25519', false, ['sign', 'verify']) as Promise<CryptoKeyPair>;

it('two windows at one desk lose no decision of each other’s', async () => {
  const keep = await openKeep('desks-two');
  if (!keep.ok) throw new Error(keep.trouble);
  const add = (slot: string) =>
    changeDesk(keep.value, 'club', (desk) => ({ ...desk, decisions: [...desk.decisions, [slot, 'yes']] }));
  await Promise.all([add('a'), add('b')]);
  const desk = await readDesk(keep.value, 'club');
  expect(desk.ok && desk.value.decisions.map(([slot]) => slot).sort()).toEqual(['a', 'b']);
  keep.value.close();
});

it('an edition is kept with its key and its files, or nothing of it is, at whatever write the space runs out', async () => {
  const { put } = IDBObjectStore.prototype;
  const keys = await newKeys();
  const files = [{ name: 'a.pack', text: 'a' }];
  for (let most = 0; most < 5; most += 1) {
    const keep = await openKeep(`desks-full-${most}`);
    if (!keep.ok) throw new Error(keep.trouble);
    const db = keep.value;
    await putPacks(db, [pack('club', 1)]);
    await changeDesk(db, 'club', (desk) => ({ ...desk, proposals: ['one'] }));
    let left = most;
    IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...args: Parameters<typeof put>) {
      if (left === 0) throw new DOMException('', 'QuotaExceededError');
      left -= 1;
      return put.apply(this, args);
    };
    try {
      const kept = await keepEdition(db, 'club', pack('club-key', 2), known('club-key', 2), keys, files);
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
    await keepEdition(db, 'club', pack('club-key', 2), known('club-key', 2), keys, files);
    expect(await state()).toEqual([['club-key'], [], true]);
    const desk = await readDesk(db, 'club-key');
    expect(desk.ok && desk.value.published).toEqual({ edition: 2, files });
    db.close();
  }
});
