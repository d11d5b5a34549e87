import 'fake-indexeddb/auto';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { type Database, openKeep } from '../../../src/keep/open';
import { putPacks, switchPack } from '../../../src/keep/packs';
import type { KeptCompiled } from '../../../src/keep/schema';
import { contentHash } from '../../../src/pack/compiled/content-hash';
import { DamagedError } from '../../../src/pack/compiled/pages';
import * as reading from '../../../src/pack/parse';
import { loadShelf } from '../../../src/session/load-shelf';
import { openText } from '../../../src/session/open-text';
import { knowledgeOf } from '../../../src/session/packs';
import { accepted, fullPack, smallPack } from '../../unit/pack/support/packs';

let db: Database;
let count = 0;
afterEach(() => {
  db.close();
  vi.restoreAllMocks();
});

async function open(): Promise<void> {
  count += 1;
  const keep = await openKeep(`load-shelf-${count}`);
  if (!keep.ok) throw new Error(keep.trouble);
  db = keep.value;
}

const shipped = [{ file: 'trade.json', text: JSON.stringify(smallPack({}, { id: 'trade' })) }];
const text = JSON.stringify(accepted(fullPack()));
const club = { id: 'ottermere', edition: 3, text, installedAt: '2026-06-01T10:00:00.000Z' };

/** One that has more bytes than come with a record; the others lie in their records whole. */
const more = Array.from({ length: 2_000 }, (_, i) => ({
  id: `more-${i}`,
  label: `More ${i}`,
  names: [`Word${i} more`],
}));
const whole = accepted(fullPack());
const long = { ...club, text: JSON.stringify({ ...whole, models: [...whole.models!, ...more] }) };

function changed(bytes: ArrayBuffer, at: number): ArrayBuffer {
  const other = new Uint8Array(bytes.slice(0));
  other[at]! ^= 4;
  return other.buffer;
}

const blank = ({ size }: Blob) => new Blob([new Uint8Array(size)]);

/** The shelf, and how many texts had to be read for it. */
async function load(engine = '1', whole = false) {
  const parse = vi.spyOn(reading, 'parsePack');
  const shelf = await loadShelf(db, shipped, engine, openText, whole);
  const read = parse.mock.calls.length;
  parse.mockRestore();
  if (!shelf.ok) throw new Error(shelf.trouble);
  return {
    shelf: shelf.value,
    read,
    runs: knowledgeOf(shelf.value)
      .serials.find('K20120B')
      .map(({ last }) => last),
  };
}

const RUNS = ['20150', 'K20400B'];
const ready = () => db.getAllKeys('compiled');

describe('the shelf', () => {
  it('is read from the texts once, and from what was made of them from then on', async () => {
    await open();
    await putPacks(db, [club]);
    expect(await load()).toMatchObject({ read: 2, runs: RUNS });
    const again = await load();
    expect(again).toMatchObject({ read: 0, runs: RUNS });
    expect(again.shelf.map(({ id, edition, shipped }) => [id, edition, shipped])).toEqual([
      ['trade', 1, true],
      ['ottermere', 3, false],
    ]);
  });

  it('notes the hash of a text that came without one', async () => {
    await open();
    await putPacks(db, [club]);
    await load();
    expect((await db.get('packs', 'ottermere'))?.hash).toBe(await contentHash(text));
  });

  it('is read anew by another version of the engine, which throws away what the one before made', async () => {
    await open();
    await putPacks(db, [club]);
    await load('1');
    expect(await load('2')).toMatchObject({ read: 2, runs: RUNS });
    expect((await ready()).map(([engine]) => engine)).toEqual(['2', '2']);
  });

  it.each<[what: string, seen: 'at once' | 'when asked', damage: (kept: KeptCompiled) => KeptCompiled]>([
    ['cut off', 'at once', (kept) => ({ ...kept, first: kept.first.slice(0, kept.first.byteLength - 8) })],
    ['without its end', 'at once', (kept) => ({ ...kept, rest: null })],
    ['gone', 'at once', (kept) => ({ ...kept, first: new ArrayBuffer(0) })],
    ['changed in its head', 'at once', (kept) => ({ ...kept, first: changed(kept.first, 30) })],
    ['changed in what it is about', 'at once', (kept) => ({ ...kept, first: changed(kept.first, 4_000) })],
    ['without its middle', 'at once', (kept) => ({ ...kept, often: null })],
    ['changed behind it', 'when asked', (kept) => ({ ...kept, often: blank(kept.often!), rest: blank(kept.rest!) })],
  ])('is read anew where what was made of it is %s, which is seen %s', async (_, seen, damage) => {
    await open();
    await putPacks(db, [long]);
    await load();
    const key = ['1', await contentHash(long.text)] as [string, string];
    await db.put('compiled', damage((await db.get('compiled', key))!));
    if (seen === 'when asked') await expect(load()).rejects.toThrow(DamagedError);
    expect(await load('1', seen === 'when asked')).toMatchObject({ read: 1, runs: RUNS });
    expect(await load()).toMatchObject({ read: 0, runs: RUNS });
  });

  it('is read anew where what was made of it is no file of bytes at all', async () => {
    await open();
    await putPacks(db, [club]);
    await load();
    const key = ['1', await contentHash(text)] as [string, string];
    await db.put('compiled', { ...(await db.get('compiled', key))!, rest: 'none' as never });
    expect(await load()).toMatchObject({ read: 1, runs: RUNS });
  });

  it('takes the new text where a pack was replaced, and forgets what was made of the old', async () => {
    await open();
    await putPacks(db, [club]);
    await load();
    const newer = text.replace('"K20400B"', '"K20300B"');
    await putPacks(db, [{ ...club, edition: 4, text: newer }]);
    expect((await load()).runs).toEqual(['20150', 'K20300B']);
    expect(await ready()).toHaveLength(2);
  });

  it('is there where nothing can be kept', async () => {
    await open();
    await putPacks(db, [club]);
    const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('', 'QuotaExceededError');
    });
    expect(await load()).toMatchObject({ read: 2, runs: RUNS });
    put.mockRestore();
    expect(await ready()).toEqual([]);
  });

  it('shows a pack that it can’t read, and one whose text is gone', async () => {
    await open();
    await putPacks(db, [
      { ...club, text: '{"schema":2}' },
      { ...club, id: 'gone' },
    ]);
    await db.delete('texts', 'gone');
    const { shelf } = await load();
    expect(shelf.map(({ id, parts, issues }) => [id, parts === null, issues.length > 0])).toEqual([
      ['trade', false, false],
      ['gone', true, true],
      ['ottermere', true, true],
    ]);
  });

  it('says which packs are switched off, and lets them be silent', async () => {
    await open();
    await putPacks(db, [club]);
    await switchPack(db, 'ottermere', false);
    const { shelf, runs } = await load();
    expect(shelf.map(({ on }) => on)).toEqual([true, false]);
    expect(runs).toEqual([]);
  });

  it('has a trouble where it can’t be read', async () => {
    await open();
    db.close();
    expect(await loadShelf(db, shipped, '1', openText)).toEqual({ ok: false, trouble: 'denied' });
  });
});
