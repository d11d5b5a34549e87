import 'fake-indexeddb/auto';
import { openDB } from 'idb';
import { afterEach, describe, expect, it } from 'vitest';
import { migrations } from '../../../src/keep/migrations';
import { type Database, openKeep } from '../../../src/keep/open';
import { noteHash, putPacks, readShelf, readText, removePack, restorePack, switchPack } from '../../../src/keep/packs';
import { troubleOf } from '../../../src/keep/trouble';

const STORES = [
  ...['answers', 'audits', 'compiled', 'desks', 'drafts', 'keys', 'known', 'layers', 'marks', 'observations', 'offers'],
  ...['packs', 'photos', 'rates', 'sheets', 'subscriptions', 'switches', 'texts'],
];

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

const head = (id: string) => ({ id, edition: 1, installedAt: '2026-06-01T10:00:00.000Z' });
const pack = (id: string, text = '{}') => ({ ...head(id), text });
const textOf = async (db: Database, id: string) => {
  const text = await readText(db, id);
  return text.ok ? text.value : text.trouble;
};
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
    expect(shelf).toEqual({ ok: true, value: { packs: [head('a'), head('b')], switches: new Map([['a', false]]) } });
  });

  it('are kept to the letter', async () => {
    const db = await opened(await freshName());
    const text = '{"x": "\\u202e \u00e9 \ud83e\uddf5"}\n\n';
    await putPacks(db, [pack('a', text)]);
    expect(await textOf(db, 'a')).toBe(text);
  });

  it('are put all or not at all', async () => {
    const db = await opened(await freshName());
    const withoutId = { edition: 1, text: '', installedAt: '' } as never;
    expect((await putPacks(db, [pack('a'), withoutId])).ok).toBe(false);
    expect(await ids(db)).toEqual([]);
    expect(await textOf(db, 'a')).toBeNull();
  });

  it('stay as they were where the space runs out in the middle', async () => {
    const db = await opened(await freshName());
    await putPacks(db, [pack('a', 'old')]);
    const put = IDBObjectStore.prototype.put;
    let left = 3;
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
    expect(await ids(db)).toEqual(['a']);
    expect(await textOf(db, 'a')).toBe('old');
  });

  it('get the hash of their text when it is known, unless another text has come since', async () => {
    const db = await opened(await freshName());
    await putPacks(db, [{ ...pack('a'), sealedBy: '0a1b' }]);
    await noteHash(db, head('a'), 'abcd');
    await noteHash(db, { ...head('a'), edition: 2 }, 'another edition');
    await noteHash(db, { ...head('a'), installedAt: '' }, 'another installation');
    await noteHash(db, head('gone'), 'none');
    const shelf = await readShelf(db);
    expect(shelf.ok && shelf.value.packs).toEqual([{ ...head('a'), sealedBy: '0a1b', hash: 'abcd' }]);
  });

  it('can be removed and put back as they were', async () => {
    const db = await opened(await freshName());
    await putPacks(db, [pack('a')]);
    await switchPack(db, 'a', false);
    const removed = await removePack(db, 'a');
    expect(await ids(db)).toEqual([]);
    if (!removed.ok || !removed.value) throw new Error('nothing was removed');
    expect(await textOf(db, 'a')).toBeNull();
    await restorePack(db, removed.value);
    const shelf = await readShelf(db);
    expect(shelf).toEqual({ ok: true, value: { packs: [head('a')], switches: new Map([['a', false]]) } });
    expect(await textOf(db, 'a')).toBe('{}');
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
      expect([...db.objectStoreNames]).toEqual(STORES);
    }
  });

  it('keeps everything that the first version held', async () => {
    const name = await freshName();
    const old = await openDB(name, 1, {
      upgrade(db, _from, _to, change) {
        migrations[0]!(db as never, change as never);
      },
    });
    const draft = { id: 'd', draft: { title: 'A draft' }, changedAt: '2026-06-01T10:00:00.000Z' };
    const texts = Array.from({ length: 12 }, (_, i) => `{"number": ${i}, "é": "\u202e"}`);
    for (const [i, text] of texts.entries()) await old.put('packs', { ...pack(`p${i}`, text), sealedBy: '0a1b' });
    await old.put('switches', { id: 'p3', on: false });
    await old.put('drafts', draft);
    old.close();
    const db = await opened(name);
    const shelf = await readShelf(db);
    if (!shelf.ok) throw new Error(shelf.trouble);
    expect(shelf.value.packs).toHaveLength(12);
    expect(shelf.value.packs[0]).toEqual({ ...head('p0'), sealedBy: '0a1b' });
    expect(shelf.value.switches).toEqual(new Map([['p3', false]]));
    for (const [i, text] of texts.entries()) expect(await textOf(db, `p${i}`)).toBe(text);
    expect(await db.getAll('drafts')).toEqual([draft]);
  });

  it('stays what it was where an upgrade fails', async () => {
    const name = await freshName();
    const old = await openDB(name, 1, {
      upgrade(db, _from, _to, change) {
        migrations[0]!(db as never, change as never);
      },
    });
    await old.put('packs', pack('a', 'text'));
    old.close();
    const put = IDBObjectStore.prototype.put;
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('', 'QuotaExceededError');
    };
    expect(await openKeep(name)).toEqual({ ok: false, trouble: 'full' });
    IDBObjectStore.prototype.put = put;
    expect(await textOf(await opened(name), 'a')).toBe('text');
  });

  it('gives way to a newer version instead of blocking it', async () => {
    const name = await freshName();
    await opened(name);
    const newer = await openDB(name, migrations.length + 1);
    expect(newer.version).toBe(migrations.length + 1);
    newer.close();
  });

  it('says that an older version is still open, also to those that wait behind the first', async () => {
    const name = await freshName();
    const old = await openDB(name, 1, {
      upgrade(db, _from, _to, change) {
        migrations[0]!(db as never, change as never);
      },
    });
    await old.put('packs', pack('a', 'text'));
    const blocked = { ok: false, trouble: 'blocked' };
    expect(await Promise.all([openKeep(name, 200), openKeep(name, 200)])).toEqual([blocked, blocked]);
    old.close();
    expect(await textOf(await opened(name), 'a')).toBe('text');
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
