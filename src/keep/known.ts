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

/**
 * Forgets a pack whose file is not here: whatever comes under its id next is a first one.
 * @returns what was forgotten; null where nothing was, for the pack is here or is not remembered
 */
export function forgetKnown(db: Database, id: string): Promise<Kept<KeptKnown | null>> {
  return change(db, ['packs', 'known'], async (transaction) => {
    const [packs, known] = [transaction.objectStore('packs'), transaction.objectStore('known')];
    const there = (await packs.getKey(id)) === undefined ? await known.get(id) : undefined;
    if (there) await known.delete(id);
    return there ?? null;
  });
}

/** Remembers again what was forgotten, unless something has come under that id meanwhile. */
export function recallKnown(db: Database, forgotten: KeptKnown): Promise<Kept<void>> {
  return change(db, ['known'], (transaction) => recall(transaction.objectStore('known'), forgotten));
}

/** Within a change. */
export async function recall(store: Store, known: KeptKnown): Promise<void> {
  if (!(await store.get(known.id))) await store.put(known);
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
