import { change, look } from './change';
import type { Database } from './open';
import type { KeptRate } from './schema';
import type { Kept } from './trouble';

/** All exchange rates that the user has typed in, the newest first. */
export function readRates(db: Database): Promise<Kept<KeptRate[]>> {
  return look(db, ['rates'], async (transaction) => {
    const kept = await transaction.objectStore('rates').getAll();
    return kept.sort((a, b) => b.date.localeCompare(a.date) || b.keptAt.localeCompare(a.keptAt));
  });
}

/** Keeps a rate; one with the same id is replaced. */
export function putRate(db: Database, rate: KeptRate): Promise<Kept<void>> {
  return change(db, ['rates'], async (transaction) => {
    await transaction.objectStore('rates').put(rate);
  });
}

export function removeRate(db: Database, id: string): Promise<Kept<void>> {
  return change(db, ['rates'], (transaction) => transaction.objectStore('rates').delete(id));
}
