import 'fake-indexeddb/auto';
import { afterEach, describe, expect, it } from 'vitest';
import { putCompiled, readCompiled, sweepCompiled } from '../../../src/keep/compiled';
import { type Database, openKeep } from '../../../src/keep/open';
import { putPacks } from '../../../src/keep/packs';

let db: Database | undefined;
afterEach(() => db?.close());

async function opened(name: string): Promise<Database> {
  const keep = await openKeep(name);
  if (!keep.ok) throw new Error(keep.trouble);
  db = keep.value;
  return db;
}

const made = (engine: string, hash: string, byte = 1) => ({ engine, hash, bytes: Uint8Array.of(byte, 2, 3).buffer });
const read = async (keep: Database, engine: string, hash: string) => {
  const kept = await readCompiled(keep, engine, hash);
  if (!kept.ok) return kept.trouble;
  if (!kept.value) return null;
  const { length, first, read: more } = kept.value;
  const begin = first.byteLength;
  return [...new Uint8Array(first), ...(length > begin ? new Uint8Array(more(begin, length)) : [])];
};

describe('what was made of packs', () => {
  it('is found by the engine’s version and the text’s hash, both', async () => {
    const keep = await opened('compiled-key');
    await putCompiled(keep, [made('1', 'a'), made('1', 'b', 9)]);
    expect(await read(keep, '1', 'a')).toEqual([1, 2, 3]);
    expect(await read(keep, '1', 'b')).toEqual([9, 2, 3]);
    expect(await read(keep, '2', 'a')).toBeNull();
    expect(await read(keep, '1', 'c')).toBeNull();
  });

  it.each([0, 1, 24 * 1024 - 1, 24 * 1024, 24 * 1024 + 1, 200_000])(
    'comes back, all %i bytes of it',
    async (length) => {
      const keep = await opened(`compiled-long-${length}`);
      const bytes = Uint8Array.from({ length }, (_, i) => (i * 31) >> 2);
      await putCompiled(keep, [{ engine: '1', hash: 'a', bytes: bytes.buffer }]);
      expect(await read(keep, '1', 'a')).toEqual([...bytes]);
      const kept = await readCompiled(keep, '1', 'a');
      if (!kept.ok || !kept.value || length < 30_000) return;
      expect([...new Uint8Array(kept.value.read(25_000, 25_010))]).toEqual([...bytes.slice(25_000, 25_010)]);
    },
  );

  it('comes back as well where another release has kept it in one file', async () => {
    const keep = await opened('compiled-one-file');
    const bytes = Uint8Array.from({ length: 60_000 }, (_, i) => i % 251);
    const [first, rest] = [bytes.slice(0, 10_000).buffer, new Blob([bytes.slice(10_000)])];
    await keep.put('compiled', { engine: '1', hash: 'a', first, rest } as never);
    expect(await read(keep, '1', 'a')).toEqual([...bytes]);
  });

  it('is replaced by what is made anew', async () => {
    const keep = await opened('compiled-anew');
    await putCompiled(keep, [made('1', 'a')]);
    await putCompiled(keep, [made('1', 'a', 7)]);
    expect(await read(keep, '1', 'a')).toEqual([7, 2, 3]);
  });

  it('goes with its engine and with its pack', async () => {
    const keep = await opened('compiled-sweep');
    const pack = { id: 'p', edition: 1, text: '{}', installedAt: '', hash: 'installed' };
    await putPacks(keep, [pack, { ...pack, id: 'q', hash: undefined } as never]);
    await putCompiled(keep, [made('2', 'installed'), made('1', 'installed'), made('2', 'shipped'), made('2', 'gone')]);
    await sweepCompiled(keep, '2', ['shipped']);
    expect(await keep.getAllKeys('compiled')).toEqual([
      ['2', 'installed'],
      ['2', 'shipped'],
    ]);
  });
});
