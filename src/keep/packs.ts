import type { Database } from './open';
import type { KeptPack } from './schema';
import { type Kept, troubleOf } from './trouble';

/** All installed packs, and for every pack that was ever switched whether it is on. */
export interface Shelf {
  packs: KeptPack[];
  switches: ReadonlyMap<string, boolean>;
}

export function readShelf(db: Database): Promise<Kept<Shelf>> {
  return kept(async () => {
    const read = db.transaction(['packs', 'switches']);
    const [packs, switches] = await Promise.all([
      read.objectStore('packs').getAll(),
      read.objectStore('switches').getAll(),
      read.done,
    ]);
    return { packs, switches: new Map(switches.map(({ id, on }) => [id, on])) };
  });
}

/** Puts packs on the shelf, all of them or none; one with the same id is replaced. */
export function putPacks(db: Database, packs: readonly KeptPack[]): Promise<Kept<void>> {
  return kept(async () => {
    const write = db.transaction('packs', 'readwrite');
    await Promise.all([...packs.map((pack) => write.store.put(pack)), write.done]);
  });
}

/** Takes a pack off the shelf, and forgets how it was switched. */
export function removePack(db: Database, id: string): Promise<Kept<void>> {
  return kept(async () => {
    const write = db.transaction(['packs', 'switches'], 'readwrite');
    await Promise.all([write.objectStore('packs').delete(id), write.objectStore('switches').delete(id), write.done]);
  });
}

export function switchPack(db: Database, id: string, on: boolean): Promise<Kept<void>> {
  return kept(async () => {
    await db.put('switches', { id, on });
  });
}

async function kept<T>(work: () => Promise<T>): Promise<Kept<T>> {
  try {
    return { ok: true, value: await work() };
  } catch (error) {
    return { ok: false, trouble: troubleOf(error) };
  }
}
