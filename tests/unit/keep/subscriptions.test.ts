import 'fake-indexeddb/auto';
import { afterEach, describe, expect, it } from 'vitest';
import { forgetKnown, readKnown, recallKnown } from '../../../src/keep/known';
import { type Database, openKeep } from '../../../src/keep/open';
import { putPacks, readShelf, readText, removePack, restorePack } from '../../../src/keep/packs';
import type { KeptKnown, KeptOffer } from '../../../src/keep/schema';
import {
  changeSubscription,
  leaveOffer,
  putOffer,
  readSubscriptions,
  removeSubscription,
  takeOffer,
} from '../../../src/keep/subscriptions';
import type { Kept } from '../../../src/keep/trouble';

let count = 0;
const open: Database[] = [];
async function opened(): Promise<Database> {
  count += 1;
  const keep = await openKeep(`subscriptions-test-${count}`);
  if (!keep.ok) throw new Error(keep.trouble);
  open.push(keep.value);
  return keep.value;
}
afterEach(() => {
  for (const db of open.splice(0)) db.close();
});

function value<T>(kept: Kept<T>): T {
  if (!kept.ok) throw new Error(kept.trouble);
  return kept.value;
}

const AT = '2026-06-01T10:00:00.000Z';
const NOW = { at: '2026-06-02T10:00:00.000Z', due: 1_000 };
const known = (edition: number, hash = `text-${edition}`): KeptKnown => ({
  ...{ id: 'club', key: 'key', edition, hash, next: null, earlier: [] },
});
const pack = (edition: number) => ({ id: 'club', edition, installedAt: AT, hash: `text-${edition}` });
const offer = (edition: number, before: number | null): KeptOffer => ({
  ...{ id: 'club', pack: pack(edition), text: `text of ${edition}`, remember: known(edition) },
  judgedAgainst: before === null ? null : known(before),
  replaces: before === null ? null : `text-${before}`,
  subscription: { address: 'https://packs.example/club', sha256: `file-${edition}` },
});

const editionOf = async (db: Database) => value(await readShelf(db)).packs[0]?.edition ?? null;
const followedIn = async (db: Database) => value(await readSubscriptions(db))[0] ?? null;

describe('an edition that waits for a yes', () => {
  it('is nothing but waiting until the yes', async () => {
    const db = await opened();
    await putOffer(db, offer(1, null));
    expect([await editionOf(db), await followedIn(db), value(await readKnown(db)).size]).toEqual([null, null, 0]);
  });

  it('becomes the pack, what is remembered and what is followed at once', async () => {
    const db = await opened();
    await putOffer(db, offer(1, null));
    expect(value(await takeOffer(db, 'club', 'text-1', NOW))).toBe('taken');
    expect(value(await readText(db, 'club'))).toBe('text of 1');
    expect(value(await readShelf(db)).packs).toEqual([{ ...pack(1), installedAt: NOW.at }]);
    expect(value(await readKnown(db)).get('club')).toEqual(known(1));
    expect(await followedIn(db)).toMatchObject({
      ...{ address: 'https://packs.example/club', since: NOW.at, due: 1_000, file: { edition: 1, sha256: 'file-1' } },
    });
    expect(value(await takeOffer(db, 'club', 'text-1', NOW))).toBe('gone');
  });

  it('takes the place of what it was judged against, and of nothing else', async () => {
    const db = await opened();
    await putPacks(db, [{ ...pack(1), text: 'text of 1' }], [known(1)]);
    await putOffer(db, offer(2, 1));
    await putPacks(db, [{ ...pack(3), text: 'text of 3' }], [known(3)]);
    expect(value(await takeOffer(db, 'club', 'text-2', NOW))).toBe('stale');
    expect([await editionOf(db), value(await readText(db, 'club'))]).toEqual([3, 'text of 3']);
    expect(await followedIn(db)).toBeNull();
    expect(value(await takeOffer(db, 'club', 'text-2', NOW))).toBe('gone');
  });

  it('is taken only as it was shown', async () => {
    const db = await opened();
    await putOffer(db, offer(1, null));
    await putOffer(db, offer(2, null));
    expect(value(await takeOffer(db, 'club', 'text-1', NOW))).toBe('gone');
    expect(value(await takeOffer(db, 'club', 'text-2', NOW))).toBe('taken');
  });

  it('is left, and that is remembered where the pack is followed', async () => {
    const db = await opened();
    await putOffer(db, offer(1, null));
    await leaveOffer(db, 'club');
    expect([value(await takeOffer(db, 'club', 'text-1', NOW)), await followedIn(db)]).toEqual(['gone', null]);
    await putOffer(db, offer(1, null));
    await takeOffer(db, 'club', 'text-1', NOW);
    await putOffer(db, offer(2, 1));
    await leaveOffer(db, 'club');
    expect(await followedIn(db)).toMatchObject({ left: 2 });
    expect(await editionOf(db)).toBe(1);
  });

  it('leaves everything as it was where the space runs out at any write of the yes', async () => {
    const { put } = IDBObjectStore.prototype;
    for (let most = 0; most < 4; most += 1) {
      const db = await opened();
      await putPacks(db, [{ ...pack(1), text: 'text of 1' }], [known(1)]);
      await putOffer(db, offer(2, 1));
      let left = most;
      IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...args: Parameters<typeof put>) {
        if (left === 0) throw new DOMException('', 'QuotaExceededError');
        left -= 1;
        return put.apply(this, args);
      };
      try {
        expect(await takeOffer(db, 'club', 'text-2', NOW)).toEqual({ ok: false, trouble: 'full' });
      } finally {
        IDBObjectStore.prototype.put = put;
      }
      expect([await editionOf(db), value(await readText(db, 'club')), await followedIn(db)]).toEqual([
        ...[1, 'text of 1', null],
      ]);
      expect(value(await readKnown(db)).get('club')).toEqual(known(1));
      expect(value(await takeOffer(db, 'club', 'text-2', NOW))).toBe('taken');
    }
  });
});

describe('what is followed', () => {
  async function following(): Promise<Database> {
    const db = await opened();
    await putOffer(db, offer(1, null));
    await takeOffer(db, 'club', 'text-1', NOW);
    return db;
  }

  it('is changed as it stands, not as it was read', async () => {
    const db = await following();
    await Promise.all([
      changeSubscription(db, 'club', (now) => ({ ...now, failures: now.failures + 1 })),
      changeSubscription(db, 'club', (now) => ({ ...now, failures: now.failures + 1 })),
    ]);
    expect(await followedIn(db)).toMatchObject({ failures: 2 });
    expect(value(await changeSubscription(db, 'other', (now) => now))).toBeNull();
  });

  it('is followed no longer where the user says so; the pack stays, what waited goes', async () => {
    const db = await following();
    await putOffer(db, offer(2, 1));
    await removeSubscription(db, 'club');
    expect([await followedIn(db), await editionOf(db)]).toEqual([null, 1]);
    expect(value(await takeOffer(db, 'club', 'text-2', NOW))).toBe('gone');
  });

  it('goes with the pack and comes back with it', async () => {
    const db = await following();
    const removed = value(await removePack(db, 'club'));
    expect([await followedIn(db), await editionOf(db)]).toEqual([null, null]);
    await restorePack(db, removed!);
    expect(await followedIn(db)).toMatchObject({ address: 'https://packs.example/club' });
  });
});

describe('what is remembered of a pack', () => {
  it('outlives the pack, and is forgotten only while the pack is not here', async () => {
    const db = await opened();
    await putPacks(db, [{ ...pack(2), text: 'text of 2' }], [known(2)]);
    await forgetKnown(db, 'club');
    expect(value(await readKnown(db)).get('club')).toEqual(known(2));
    await removePack(db, 'club');
    expect(value(await readKnown(db)).get('club')).toEqual(known(2));
    expect(value(await forgetKnown(db, 'club'))).toEqual(known(2));
    expect(value(await readKnown(db)).size).toBe(0);
    expect(value(await forgetKnown(db, 'club'))).toBeNull();
  });

  it('is remembered again where nothing else has come under that id, and with the pack that is put back', async () => {
    const db = await opened();
    await putPacks(db, [{ ...pack(2), text: 'text of 2' }], [known(2)]);
    const removed = value(await removePack(db, 'club'));
    const forgotten = value(await forgetKnown(db, 'club'));
    await recallKnown(db, forgotten!);
    expect(value(await readKnown(db)).get('club')).toEqual(known(2));
    await forgetKnown(db, 'club');
    await restorePack(db, removed!);
    expect(value(await readKnown(db)).get('club')).toEqual(known(2));
    await putPacks(db, [{ ...pack(3), text: '' }], [known(3)]);
    await recallKnown(db, forgotten!);
    expect(value(await readKnown(db)).get('club')).toEqual(known(3));
  });

  it('never goes back, also where an earlier edition is put on the shelf', async () => {
    const db = await opened();
    await putPacks(db, [{ ...pack(5), text: '' }], [known(5)]);
    await putPacks(db, [{ ...pack(3), text: '' }], [known(3)]);
    expect([await editionOf(db), value(await readKnown(db)).get('club')?.edition]).toEqual([3, 5]);
  });
});
