import { oftenAskedIn, type Stored } from '../pack/compiled/pages';
import { change, look } from './change';
import { readerOf } from './file-bytes';
import type { Database } from './open';
import type { Kept } from './trouble';

/** So many bytes lie in the record itself: what every question asks for. The smaller the record, the sooner it comes. */
const FIRST = 24 * 1024;

/** What this version of the engine made of the text with this hash, or null. */
export function readCompiled(db: Database, engine: string, hash: string): Promise<Kept<Stored | null>> {
  return look(db, ['compiled'], async (transaction) => {
    const kept = await transaction.objectStore('compiled').get([engine, hash]);
    if (!kept) return null;
    const { first, often, rest } = kept;
    const begin = first.byteLength;
    const files = [often, rest].filter((file) => file != null);
    const read = await readerOf(files);
    const length = files.reduce((sum, { size }) => sum + size, begin);
    return { length, first, read: (from, to) => read(from - begin, to - begin) };
  });
}

/** What was made of one text. */
export interface Compiled {
  engine: string;
  hash: string;
  bytes: ArrayBuffer;
}

/** Keeps what was made of some texts. It can be made anew, so that nothing is lost where there is no room for it. */
export function putCompiled(db: Database, made: readonly Compiled[]): Promise<Kept<void>> {
  return change(db, ['compiled'], async (transaction) => {
    for (const { bytes, ...key } of made) {
      const often = oftenAskedIn(bytes, FIRST);
      const files = { often: fileOf(bytes, FIRST, often), rest: fileOf(bytes, often, bytes.byteLength) };
      await transaction.objectStore('compiled').put({ ...key, first: bytes.slice(0, FIRST), ...files });
    }
  });
}

function fileOf(bytes: ArrayBuffer, from: number, to: number): Blob | null {
  return from < to ? new Blob([new Uint8Array(bytes, from, to - from)]) : null;
}

/**
 * Throws away what other versions of the engine have made, and what was made of texts that are not here any more.
 * @param more hashes of texts that stay though they are no installed pack's: those that came with the program
 */
export function sweepCompiled(db: Database, engine: string, more: readonly string[]): Promise<Kept<void>> {
  return change(db, ['packs', 'compiled'], async (transaction) => {
    const packs = await transaction.objectStore('packs').getAll();
    const wanted = new Set([...more, ...packs.map(({ hash }) => hash)]);
    const compiled = transaction.objectStore('compiled');
    for (const key of await compiled.getAllKeys())
      if (key[0] !== engine || !wanted.has(key[1])) await compiled.delete(key);
  });
}
