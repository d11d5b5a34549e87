import { change, look } from './change';
import type { Database } from './open';
import type { KeptObservation } from './schema';
import type { Kept } from './trouble';

/** All prices that the user has kept, the one that was seen last first. */
export function readObservations(db: Database): Promise<Kept<KeptObservation[]>> {
  return look(db, ['observations'], async (transaction) => {
    // Sorted here: by the index a hundred thousand of them take several times as long.
    const kept = await transaction.objectStore('observations').getAll();
    return kept.sort((a, b) => (a.date === b.date ? (a.id < b.id ? 1 : -1) : a.date < b.date ? 1 : -1));
  });
}

/** Who waits for many prices to be kept hears how far it is, and can stop it. */
export interface Watch {
  progress: (done: number) => void;
  cancelled: () => boolean;
}

/** So many are handed to the database before it is waited for: one by one it takes ten times as long. */
const AT_ONCE = 2_000;

/**
 * Keeps prices, all of them or none; one with the same id is replaced.
 * @param watch asked now and then; cancelled, nothing is kept and the answer is a trouble
 */
export function putObservations(
  db: Database,
  observations: readonly KeptObservation[],
  watch?: Watch,
): Promise<Kept<void>> {
  return change(db, ['observations'], async (transaction) => {
    const store = transaction.objectStore('observations');
    for (let at = 0; at < observations.length; at += AT_ONCE) {
      if (watch?.cancelled()) throw new DOMException('cancelled', 'AbortError');
      await Promise.all(observations.slice(at, at + AT_ONCE).map(async (one) => store.put(one)));
      watch?.progress(Math.min(at + AT_ONCE, observations.length));
    }
    if (watch?.cancelled()) throw new DOMException('cancelled', 'AbortError');
  });
}

export function removeObservations(db: Database, ids: readonly string[]): Promise<Kept<void>> {
  return change(db, ['observations'], async (transaction) => {
    const store = transaction.objectStore('observations');
    for (const id of ids) await store.delete(id);
  });
}
