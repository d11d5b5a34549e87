import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import { type Database, openKeep } from '../../../src/keep/open';
import { putPhotos, readPhotos, removePhoto } from '../../../src/keep/photos';
import type { KeptPhoto } from '../../../src/keep/schema';
import { putSheet, readSheets, removeSheet } from '../../../src/keep/sheets';
import { sampleListing } from '../view/sample';

async function withDatabase<T>(work: (db: Database) => Promise<T>): Promise<T> {
  const opened = await openKeep(`photos-${Math.random()}`);
  if (!opened.ok) throw new Error(opened.trouble);
  try {
    return await work(opened.value);
  } finally {
    opened.value.close();
  }
}

const photo = (id: string, about: string, addedAt: string): KeptPhoto => ({
  ...{ id, about, addedAt, name: `${id}.jpg`, bytes: new Uint8Array([1, 2, 3]).buffer },
});

describe('photos that the user has picked', () => {
  it('come back with their thing, in the order in which they were added, and go', async () => {
    await withDatabase(async (db) => {
      const [first, second] = [photo('b', 'enquiry', '2026-11-25T10:00'), photo('a', 'enquiry', '2026-11-25T10:01')];
      await putPhotos(db, [second, photo('c', 'https://market.example/1', '2026-11-25T09:00'), first]);
      const read = await readPhotos(db, 'enquiry');
      expect(read.ok && read.value.map(({ id, bytes }) => [id, [...new Uint8Array(bytes)]])).toEqual([
        ['b', [1, 2, 3]],
        ['a', [1, 2, 3]],
      ]);
      await removePhoto(db, 'b');
      const left = await readPhotos(db, 'enquiry');
      expect(left.ok && left.value.map(({ id }) => id)).toEqual(['a']);
    });
  });
});

describe('adverts of which there is a viewing sheet', () => {
  it('come back, the newest first; one made again takes the place of the earlier one', async () => {
    await withDatabase(async (db) => {
      const sheet = (about: string, madeAt: string) => ({ about, madeAt, listing: sampleListing });
      for (const each of [sheet('x', '2026-11-01'), sheet('y', '2026-11-02'), sheet('x', '2026-11-03')])
        await putSheet(db, each);
      const read = await readSheets(db);
      expect(read.ok && read.value.map(({ about, madeAt }) => [about, madeAt])).toEqual([
        ['x', '2026-11-03'],
        ['y', '2026-11-02'],
      ]);
      await removeSheet(db, 'x');
      const left = await readSheets(db);
      expect(left.ok && left.value.map(({ about }) => about)).toEqual(['y']);
    });
  });
});
