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

/** A pack that was taken off the shelf, so that it can be put back as it was. */
export interface Removed {
  pack: KeptPack;
  on: boolean;
}

/** Takes a pack off the shelf, and forgets how it was switched. @returns what was taken, or null where nothing was */
export function removePack(db: Database, id: string): Promise<Kept<Removed | null>> {
  return kept(async () => {
    const write = db.transaction(['packs', 'switches'], 'readwrite');
    const [packs, switches] = [write.objectStore('packs'), write.objectStore('switches')];
    const pack = await packs.get(id);
    const on = (await switches.get(id))?.on ?? true;
    await Promise.all([packs.delete(id), switches.delete(id), write.done]);
    return pack ? { pack, on } : null;
  });
}

/** Puts a pack back as it was before it was removed. */
export function restorePack(db: Database, { pack, on }: Removed): Promise<Kept<void>> {
  return kept(async () => {
    const write = db.transaction(['packs', 'switches'], 'readwrite');
    await Promise.all([
      write.objectStore('packs').put(pack),
      write.objectStore('switches').put({ id: pack.id, on }),
      write.done,
    ]);
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
