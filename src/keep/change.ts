import type { IDBPTransaction, StoreNames } from 'idb';
import type { Database } from './open';
import type { Schema } from './schema';
import { type Kept, troubleOf } from './trouble';

type Stores = StoreNames<Schema>[];
type Reading<S extends Stores> = IDBPTransaction<Schema, S, 'readonly'>;
type Writing<S extends Stores> = IDBPTransaction<Schema, S, 'readwrite'>;

/**
 * Reads from some stores as they stand at one moment. What has been read stays true: nobody waits until the browser has
 * put the transaction away.
 */
export function look<S extends Stores, T>(
  db: Database,
  stores: [...S],
  work: (transaction: Reading<S>) => Promise<T>,
): Promise<Kept<T>> {
  return settled(
    () => db.transaction(stores),
    (transaction) => {
      transaction.done.catch(() => {});
      return work(transaction);
    },
  );
}

/** Changes some stores, wholly or not at all: whatever goes wrong, nothing of the work remains. */
export function change<S extends Stores, T>(
  db: Database,
  stores: [...S],
  work: (transaction: Writing<S>) => Promise<T>,
): Promise<Kept<T>> {
  return settled(
    () => db.transaction(stores, 'readwrite'),
    // The work's own error says more than the transaction's end, but that end must not go unheard either.
    async (transaction) => (await Promise.all([work(transaction), transaction.done]))[0],
  );
}

interface Ending {
  done: Promise<void>;
  abort(): void;
}

async function settled<X extends Ending, T>(begin: () => X, work: (transaction: X) => Promise<T>): Promise<Kept<T>> {
  let transaction: X | undefined;
  try {
    transaction = begin();
    return { ok: true, value: await work(transaction) };
  } catch (error) {
    try {
      transaction?.abort();
    } catch {
      // It has ended already.
    }
    await transaction?.done.catch(() => {});
    return { ok: false, trouble: troubleOf(error) };
  }
}
