import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, describe, expect, it } from 'vitest';
import { beginNewLog } from '../../../src/keep/new-log';

// What it is for, only a real browser shows: tests/browser/torn-write.long.test.ts.

let databases: IDBFactory;
beforeEach(() => {
  databases = new IDBFactory();
});

describe('a new log', () => {
  it('is begun by a database that is made and gone', async () => {
    const asked: string[] = [];
    const told = {
      open(name: string) {
        asked.push('made');
        return databases.open(name);
      },
      deleteDatabase(name: string) {
        asked.push('deleted');
        return databases.deleteDatabase(name);
      },
    };
    await beginNewLog(told as typeof indexedDB);
    expect(asked).toEqual(['made', 'deleted']);
    expect(await databases.databases()).toEqual([]);
  });

  it('leaves what is kept alone, also while it is open', async () => {
    await new Promise((done) => {
      databases.open('kept').onsuccess = done;
    });
    await beginNewLog(databases as typeof indexedDB);
    expect((await databases.databases()).map(({ name }) => name)).toEqual(['kept']);
  });

  it('is no trouble where nothing can be kept', async () => {
    const denied = {
      open: () => {
        throw new DOMException('', 'SecurityError');
      },
    };
    await expect(beginNewLog(denied as unknown as typeof indexedDB)).resolves.toBeUndefined();
  });
});
