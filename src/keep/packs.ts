import { change, look } from './change';
import type { Database } from './open';
import type { KeptPack } from './schema';
import type { Kept } from './trouble';

/** All installed packs, and for every pack that was ever switched whether it is on. */
export interface Shelf {
  packs: KeptPack[];
  switches: ReadonlyMap<string, boolean>;
}

/** A pack that was taken off the shelf, so that it can be put back as it was. */
export interface Removed {
  pack: KeptPack;
  on: boolean;
}

export function readShelf(db: Database): Promise<Kept<Shelf>> {
  return look(db, ['packs', 'switches'], async (transaction) => {
    const packs = await transaction.objectStore('packs').getAll();
    const switches = await transaction.objectStore('switches').getAll();
    return { packs, switches: new Map(switches.map(({ id, on }) => [id, on])) };
  });
}

/** Which packs are installed: one after the other, so that the large ones' texts are never held together. */
export function readEditions(db: Database): Promise<Kept<Omit<KeptPack, 'text'>[]>> {
  return look(db, ['packs'], async (transaction) => {
    const editions: Omit<KeptPack, 'text'>[] = [];
    for await (const { value } of transaction.objectStore('packs')) {
      const { text: _, ...rest } = value;
      editions.push(rest);
    }
    return editions;
  });
}

/** Puts packs on the shelf, all of them or none; one with the same id is replaced. */
export function putPacks(db: Database, packs: readonly KeptPack[]): Promise<Kept<void>> {
  return change(db, ['packs'], async (transaction) => {
    for (const pack of packs) await transaction.objectStore('packs').put(pack);
  });
}

/** Takes a pack off the shelf, and forgets how it was switched. @returns what was taken, or null where nothing was */
export function removePack(db: Database, id: string): Promise<Kept<Removed | null>> {
  return change(db, ['packs', 'switches'], async (transaction) => {
    const packs = transaction.objectStore('packs');
    const switches = transaction.objectStore('switches');
    const pack = await packs.get(id);
    const on = (await switches.get(id))?.on ?? true;
    await packs.delete(id);
    await switches.delete(id);
    return pack ? { pack, on } : null;
  });
}

/** Puts a pack back as it was before it was removed. */
export function restorePack(db: Database, { pack, on }: Removed): Promise<Kept<void>> {
  return change(db, ['packs', 'switches'], async (transaction) => {
    await transaction.objectStore('packs').put(pack);
    await transaction.objectStore('switches').put({ id: pack.id, on });
  });
}

export function switchPack(db: Database, id: string, on: boolean): Promise<Kept<void>> {
  return change(db, ['switches'], async (transaction) => {
    await transaction.objectStore('switches').put({ id, on });
  });
}
