import type { IDBPDatabase, IDBPTransaction, StoreNames } from 'idb';
import type { Schema } from './schema';

type Migration = (
  db: IDBPDatabase<Schema>,
  change: IDBPTransaction<Schema, StoreNames<Schema>[], 'versionchange'>,
) => void;

/**
 * Migration n leads from version n to version n + 1. Only ever append: a browser out there has run the earlier ones.
 */
export const migrations: readonly Migration[] = [
  (db) => {
    db.createObjectStore('packs', { keyPath: 'id' });
    db.createObjectStore('switches', { keyPath: 'id' });
    db.createObjectStore('drafts', { keyPath: 'id' }).createIndex('changedAt', 'changedAt');
    db.createObjectStore('audits', { keyPath: 'id' }).createIndex('asOf', 'asOf');
    db.createObjectStore('answers', { keyPath: ['about', 'attribute'] }).createIndex('about', 'about');
    db.createObjectStore('observations', { keyPath: 'id' }).createIndex('model', 'model');
  },
];
