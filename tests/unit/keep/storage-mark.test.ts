import 'fake-indexeddb/auto';
import { afterEach, expect, it } from 'vitest';
import { type Database, openKeep } from '../../../src/keep/open';
import { storageMark } from '../../../src/keep/storage-mark';

const open: Database[] = [];
afterEach(() => {
  for (const db of open.splice(0)) db.close();
});

async function opened(name: string): Promise<Database> {
  const keep = await openKeep(name);
  if (!keep.ok) throw new Error(keep.trouble);
  open.push(keep.value);
  return keep.value;
}

it('a storage keeps the first mark that it was given, and another storage has another one', async () => {
  const [one, other] = [await opened('mark-one'), await opened('mark-other')];
  expect(await storageMark(one, 'first')).toEqual({ ok: true, value: 'first' });
  expect(await storageMark(one, 'second')).toEqual({ ok: true, value: 'first' });
  expect(await storageMark(other, 'third')).toEqual({ ok: true, value: 'third' });
});

it('of two pages that open it at once both get the same', async () => {
  const db = await opened('mark-at-once');
  const [a, b] = await Promise.all([storageMark(db, 'a'), storageMark(db, 'b')]);
  expect(a).toEqual(b);
});
