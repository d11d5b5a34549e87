import 'fake-indexeddb/auto';
import { openDB } from 'idb';
import { describe, expect, it } from 'vitest';
import { migrations } from '../../../src/keep/migrations';
import { putObservations, readObservations, removeObservations } from '../../../src/keep/observations';
import { type Database, openKeep } from '../../../src/keep/open';
import { keptPrice, priceOfKept } from '../../../src/session/kept-prices';

const SEEN = { model: 'p/m', kind: 'paid' as const, amount: 120.5, currency: 'GBP', date: '2026-03', note: 'by post' };

async function withDatabase<T>(work: (db: Database) => Promise<T>): Promise<T> {
  const opened = await openKeep(`prices-${Math.random()}`);
  if (!opened.ok) throw new Error(opened.trouble);
  try {
    return await work(opened.value);
  } finally {
    opened.value.close();
  }
}

describe('prices that the user has seen', () => {
  it('come back as they were kept, the newest first, and go', async () => {
    await withDatabase(async (db) => {
      const at = '2026-11-25T10:00:00.000Z';
      const all = [keptPrice(SEEN, 'a', at), keptPrice({ ...SEEN, date: '2026-05-01' }, 'b', at)];
      await putObservations(db, all);
      const read = await readObservations(db);
      expect(read).toEqual({ ok: true, value: [all[1], all[0]] });
      expect(read.ok && priceOfKept(read.value[1]!)).toEqual(SEEN);
      await removeObservations(db, ['a']);
      expect(await readObservations(db)).toEqual({ ok: true, value: [all[1]] });
    });
  });

  it('are kept by the thousand, telling how far it is; cancelled on the way, none is', async () => {
    await withDatabase(async (db) => {
      const all = Array.from({ length: 5_000 }, (_, i) => keptPrice(SEEN, String(i), '2026-11-25T10:00:00.000Z'));
      const told: number[] = [];
      const progress = (done: number) => void told.push(done);
      const stopped = await putObservations(db, all, { progress, cancelled: () => told.length === 2 });
      expect([stopped.ok, told]).toEqual([false, [2_000, 4_000]]);
      expect(await readObservations(db)).toEqual({ ok: true, value: [] });
      await putObservations(db, all, { progress, cancelled: () => false });
      expect(told.slice(2)).toEqual([2_000, 4_000, 5_000]);
      const read = await readObservations(db);
      expect(read.ok && read.value.length).toBe(5_000);
    });
  });

  it('that an earlier version kept are there after its upgrade', async () => {
    const name = `prices-${Math.random()}`;
    const kept = keptPrice(SEEN, 'a', '2026-11-25T10:00:00.000Z');
    const old = await openDB(name, 3, {
      upgrade: async (db, _from, _to, change) => {
        for (const migrate of migrations.slice(0, 3)) await migrate(db as never, change as never);
      },
    });
    await old.put('observations', kept);
    old.close();
    const opened = await openKeep(name);
    if (!opened.ok) throw new Error(opened.trouble);
    expect(await readObservations(opened.value)).toEqual({ ok: true, value: [kept] });
    opened.value.close();
  });

  it('are kept all or none', async () => {
    await withDatabase(async (db) => {
      const good = keptPrice(SEEN, 'a', '2026-11-25T10:00:00.000Z');
      const kept = await putObservations(db, [good, { ...good, id: null as never }]);
      expect(kept.ok).toBe(false);
      expect(await readObservations(db)).toEqual({ ok: true, value: [] });
    });
  });
});
