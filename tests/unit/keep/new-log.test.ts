import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import { beginNewLog } from '../../../src/keep/new-log';
import { openKeep } from '../../../src/keep/open';

// What it is for, only a real browser shows: tests/browser/torn-write.long.test.ts.

describe('a new log', () => {
  it('is begun by a database that is made and gone', async () => {
    const asked: string[] = [];
    const told = {
      open(name: string) {
        asked.push('made');
        return indexedDB.open(name);
      },
      deleteDatabase(name: string) {
        asked.push('deleted');
        return indexedDB.deleteDatabase(name);
      },
    };
    await beginNewLog(told as IDBFactory);
    expect(asked).toEqual(['made', 'deleted']);
    expect(await indexedDB.databases()).toEqual([]);
  });

  it('leaves what is kept alone, also while it is open', async () => {
    const keep = await openKeep();
    await beginNewLog();
    expect((await indexedDB.databases()).map(({ name }) => name)).toEqual(['bedplate']);
    if (keep.ok) keep.value.close();
  });

  it('is no trouble where nothing can be kept', async () => {
    const denied = {
      open: () => {
        throw new DOMException('', 'SecurityError');
      },
    };
    await expect(beginNewLog(denied as unknown as IDBFactory)).resolves.toBeUndefined();
  });
});
