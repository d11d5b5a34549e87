import 'fake-indexeddb/auto';
import { openDB } from 'idb';
import { afterEach, describe, expect, it } from 'vitest';
import { migrations } from '../../../src/keep/migrations';
import { type Database, openKeep } from '../../../src/keep/open';
import { putPacks, readEditions, readShelf, removePack, restorePack, switchPack } from '../../../src/keep/packs';
import { troubleOf } from '../../../src/keep/trouble';

let count = 0;
const open: Database[] = [];

async function freshName(): Promise<string> {
  count += 1;
  return `keep-test-${count}`;
}

async function opened(name: string): Promise<Database> {
  const keep = await openKeep(name);
  if (!keep.ok) throw new Error(keep.trouble);
  open.push(keep.value);
  return keep.value;
}

afterEach(() => {
  for (const db of open.splice(0)) db.close();
});

const pack = (id: string, text = '{}') => ({ id, edition: 1, text, installedAt: '2026-06-01T10:00:00.000Z' });
const ids = async (db: Database) => {
  const shelf = await readShelf(db);
  return shelf.ok ? shelf.value.packs.map(({ id }) => id) : shelf.trouble;
};

describe('packs that this browser keeps', () => {
  it('are there when the database is opened again', async () => {
    const name = await freshName();
    const first = await opened(name);
    await putPacks(first, [pack('a'), pack('b')]);
    await switchPack(first, 'a', false);
    first.close();
    const shelf = await readShelf(await opened(name));
    expect(shelf).toEqual({ ok: true, value: { packs: [pack('a'), pack('b')], switches: new Map([['a', false]]) } });
  });

  it('are kept to the letter', async () => {
    const db = await opened(await freshName());
    const text = '{"x": "\\u202e \u00e9 \ud83e\uddf5"}\n\n';
    await putPacks(db, [pack('a', text)]);
    const shelf = await readShelf(db);
    expect(shelf.ok && shelf.value.packs[0]?.text).toBe(text);
  });

  it('are put all or not at all', async () => {
    const db = await opened(await freshName());
    const withoutId = { edition: 1, text: '', installedAt: '' } as never;
    expect((await putPacks(db, [pack('a'), withoutId])).ok).toBe(false);
    expect(await ids(db)).toEqual([]);
  });

  it('stay as they were where the space runs out in the middle', async () => {
    const db = await opened(await freshName());
    await putPacks(db, [pack('a', 'old')]);
    const put = IDBObjectStore.prototype.put;
    let left = 1;
    IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...args: Parameters<typeof put>) {
      if (left === 0) throw new DOMException('', 'QuotaExceededError');
      left -= 1;
      return put.apply(this, args);
    };
    try {
      expect(await putPacks(db, [pack('a', 'new'), pack('b')])).toEqual({ ok: false, trouble: 'full' });
    } finally {
      IDBObjectStore.prototype.put = put;
    }
    const shelf = await readShelf(db);
    expect(shelf.ok && shelf.value.packs).toEqual([pack('a', 'old')]);
  });

  it('are listed without their texts where only editions matter', async () => {
    const db = await opened(await freshName());
    await putPacks(db, [{ ...pack('a'), sealedBy: '0a1b' }]);
    const editions = await readEditions(db);
    expect(editions).toEqual({
      ok: true,
      value: [{ id: 'a', edition: 1, installedAt: '2026-06-01T10:00:00.000Z', sealedBy: '0a1b' }],
    });
  });

  it('can be removed and put back as they were', async () => {
    const db = await opened(await freshName());
    await putPacks(db, [pack('a')]);
    await switchPack(db, 'a', false);
    const removed = await removePack(db, 'a');
    expect(await ids(db)).toEqual([]);
    if (!removed.ok || !removed.value) throw new Error('nothing was removed');
    await restorePack(db, removed.value);
    const shelf = await readShelf(db);
    expect(shelf).toEqual({ ok: true, value: { packs: [pack('a')], switches: new Map([['a', false]]) } });
  });

  it('that are not there can be removed without harm', async () => {
    expect(await removePack(await opened(await freshName()), 'none')).toEqual({ ok: true, value: null });
  });

  it('answer with a trouble once the database is closed', async () => {
    const db = await opened(await freshName());
    db.close();
    expect(await readShelf(db)).toEqual({ ok: false, trouble: 'denied' });
  });
});

describe('the database', () => {
  it('reaches the newest version from every earlier one', async () => {
    for (let from = 1; from <= migrations.length; from += 1) {
      const name = await freshName();
      const old = await openDB(name, from, {
        upgrade(db, _from, _to, change) {
          for (const migrate of migrations.slice(0, from)) migrate(db as never, change as never);
        },
      });
      old.close();
      const db = await opened(name);
      expect([...db.objectStoreNames]).toEqual(['answers', 'audits', 'drafts', 'observations', 'packs', 'switches']);
    }
  });

  it('gives way to a newer version instead of blocking it', async () => {
    const name = await freshName();
    await opened(name);
    const newer = await openDB(name, migrations.length + 1);
    expect(newer.version).toBe(migrations.length + 1);
    newer.close();
  });

  it('says that a newer version wrote it', async () => {
    const name = await freshName();
    (await openDB(name, migrations.length + 1)).close();
    expect(await openKeep(name)).toEqual({ ok: false, trouble: 'newer' });
  });

  it('names the troubles of storage', () => {
    expect(troubleOf(new DOMException('', 'QuotaExceededError'))).toBe('full');
    expect(troubleOf(new DOMException('', 'SecurityError'))).toBe('denied');
    expect(troubleOf(new DOMException('', 'UnknownError'))).toBe('failed');
    expect(troubleOf(null)).toBe('failed');
  });
});
