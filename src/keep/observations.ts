import { change, look } from './change';
import type { Database } from './open';
import type { KeptObservation } from './schema';
import type { Kept } from './trouble';

/** All prices that the user has kept, the one that was seen last first. */
export function readObservations(db: Database): Promise<Kept<KeptObservation[]>> {
  return look(db, ['observations'], async (transaction) => {
    const kept = await transaction.objectStore('observations').index('date').getAll();
    return kept.reverse();
  });
}

/** Keeps prices, all of them or none; one with the same id is replaced. */
export function putObservations(db: Database, observations: readonly KeptObservation[]): Promise<Kept<void>> {
  return change(db, ['observations'], async (transaction) => {
    const store = transaction.objectStore('observations');
    for (const one of observations) await store.put(one);
  });
}

export function removeObservations(db: Database, ids: readonly string[]): Promise<Kept<void>> {
  return change(db, ['observations'], async (transaction) => {
    const store = transaction.objectStore('observations');
    for (const id of ids) await store.delete(id);
  });
}
