import { change, look } from './change';
import type { Database } from './open';
import type { KeptSheet } from './schema';
import type { Kept } from './trouble';

/** All viewing sheets, the one that was made last first. */
export function readSheets(db: Database): Promise<Kept<KeptSheet[]>> {
  return look(db, ['sheets'], async (transaction) => {
    const sheets = await transaction.objectStore('sheets').index('madeAt').getAll();
    return sheets.reverse();
  });
}

/** Keeps a sheet; the one of the same page is replaced. */
export function putSheet(db: Database, sheet: KeptSheet): Promise<Kept<void>> {
  return change(db, ['sheets'], async (transaction) => {
    await transaction.objectStore('sheets').put(sheet);
  });
}

/** Its answers stay: they are the advert's. */
export function removeSheet(db: Database, about: string): Promise<Kept<void>> {
  return change(db, ['sheets'], (transaction) => transaction.objectStore('sheets').delete(about));
}
