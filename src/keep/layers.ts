import { change, look } from './change';
import type { Database } from './open';
import type { KeptChange, KeptLayer } from './schema';
import type { Kept } from './trouble';

/** What the user has changed for themselves, by the packs' ids. */
export function readLayers(db: Database): Promise<Kept<ReadonlyMap<string, KeptLayer>>> {
  return look(db, ['layers'], async (transaction) => {
    const all = await transaction.objectStore('layers').getAll();
    return new Map(all.map((layer) => [layer.id, layer]));
  });
}

/**
 * Changes a layer as it stands at that moment, so that two windows lose none of each other's work; a layer of which
 * nothing is left is gone.
 * @param work answers the layer as it should be, or null where it doesn't fit what stands there: nothing is changed then
 * @returns the layer as it is now; null where the work didn't fit
 */
export function changeLayer(
  db: Database,
  id: string,
  work: (layer: KeptLayer) => KeptLayer | null,
): Promise<Kept<KeptLayer | null>> {
  return change(db, ['layers'], async (transaction) => {
    const store = transaction.objectStore('layers');
    const there = (await store.get(id)) ?? { id, base: { edition: 0, hash: '' }, changes: [] as KeptChange[] };
    const changed = work(there);
    if (changed === null) return null;
    if (changed.changes.length === 0) await store.delete(id);
    else await store.put(changed);
    return changed;
  });
}

/** The key by which the user signs what they propose; made by `make` when there is none, and kept. It never leaves. */
export async function memberKeys(db: Database, make: () => Promise<CryptoKeyPair>): Promise<Kept<CryptoKeyPair>> {
  const there = await look(db, ['keys'], (transaction) => transaction.objectStore('keys').get('member'));
  if (!there.ok || there.value) return there.ok ? { ok: true, value: there.value!.keys } : there;
  const made = await make();
  return change(db, ['keys'], async (transaction) => {
    const store = transaction.objectStore('keys');
    // Another window may have made one meanwhile.
    const other = await store.get('member');
    if (other) return other.keys;
    await store.put({ id: 'member', keys: made });
    return made;
  });
}
