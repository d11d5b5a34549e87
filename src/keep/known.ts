import { change, look } from './change';
import type { Database } from './open';
import type { KeptKnown } from './schema';
import type { Kept } from './trouble';

/** What is remembered of all packs that were ever here under a seal, by id. */
export function readKnown(db: Database): Promise<Kept<ReadonlyMap<string, KeptKnown>>> {
  return look(db, ['known'], async (transaction) => {
    const all = await transaction.objectStore('known').getAll();
    return new Map(all.map((known) => [known.id, known]));
  });
}

/** Forgets a pack whose file is not here: whatever comes under its id next is a first one. Otherwise nothing happens. */
export function forgetKnown(db: Database, id: string): Promise<Kept<void>> {
  return change(db, ['packs', 'known'], async (transaction) => {
    if (!(await transaction.objectStore('packs').getKey(id))) await transaction.objectStore('known').delete(id);
  });
}

interface Store {
  get(id: string): Promise<KeptKnown | undefined>;
  put(known: KeptKnown): Promise<unknown>;
}

/** Within a change: what is remembered only goes forward, whatever two windows do at once. */
export async function remember(store: Store, known: KeptKnown): Promise<void> {
  const there = await store.get(known.id);
  if (!there || there.edition <= known.edition) await store.put(known);
}
