import type { IDBPDatabase, IDBPTransaction, StoreNames } from 'idb';
import type { KeptPack, Schema } from './schema';

type Migration = (
  db: IDBPDatabase<Schema>,
  change: IDBPTransaction<Schema, StoreNames<Schema>[], 'versionchange'>,
) => void | Promise<void>;

/**
 * Migration n leads from version n to version n + 1. Only ever append: a browser out there has run the earlier ones. Each
 * waits for all that it asks of the database, so that whatever goes wrong undoes the whole upgrade.
 */
export const migrations: readonly Migration[] = [
  (db) => {
    db.createObjectStore('packs', { keyPath: 'id' });
    db.createObjectStore('switches', { keyPath: 'id' });
    db.createObjectStore('drafts', { keyPath: 'id' }).createIndex('changedAt', 'changedAt');
    db.createObjectStore('audits', { keyPath: 'id' }).createIndex('asOf', 'asOf');
    db.createObjectStore('answers', { keyPath: ['about', 'attribute'] }).createIndex('about', 'about');
    db.createObjectStore('observations', { keyPath: 'id' }).createIndex('model' as never, 'model');
  },
  // Texts leave their packs, and what is made of them gets a place of its own.
  async (db, change) => {
    db.createObjectStore('compiled', { keyPath: ['engine', 'hash'] });
    const texts = db.createObjectStore('texts', { keyPath: 'id' });
    const packs = change.objectStore('packs');
    for (let cursor = await packs.openCursor(); cursor; cursor = await cursor.continue()) {
      const { text, ...pack } = cursor.value as KeptPack & { text: string };
      await texts.put({ id: pack.id, text });
      await cursor.update(pack);
    }
  },
  // Prices that the user has seen are listed by when they were seen.
  (_db, change) => {
    change.objectStore('observations').createIndex('date' as never, 'date');
  },
  // Exchange rates that the user has typed in.
  (db) => {
    db.createObjectStore('rates', { keyPath: 'id' });
  },
  // Packs are followed, and what is known of a pack is kept apart from the pack.
  (db) => {
    db.createObjectStore('known', { keyPath: 'id' });
    db.createObjectStore('subscriptions', { keyPath: 'id' });
    db.createObjectStore('offers', { keyPath: 'id' });
  },
  // Photos that the user has picked of a thing, and adverts of which there is a viewing sheet.
  (db) => {
    db.createObjectStore('photos', { keyPath: 'id' }).createIndex('about', 'about');
    db.createObjectStore('sheets', { keyPath: 'about' }).createIndex('madeAt', 'madeAt');
  },
  // What the user has changed of packs for themselves, and the keys that sign what they propose of it.
  (db) => {
    db.createObjectStore('layers', { keyPath: 'id' });
    db.createObjectStore('keys', { keyPath: 'id' });
  },
  // Prices are always read all together: without indexes that nobody asks, a hundred thousand are kept far sooner.
  (_db, change) => {
    for (const index of ['model', 'date']) change.objectStore('observations').deleteIndex(index as never);
  },
  // A keeper's proposals, decisions and published files.
  (db) => {
    db.createObjectStore('desks', { keyPath: 'id' });
  },
  // By which a storage is told from one that was begun anew.
  (db) => {
    db.createObjectStore('marks', { keyPath: 'id' });
  },
];
