import { change, look } from './change';
import type { Database } from './open';
import type { KeptPhoto } from './schema';
import type { Kept } from './trouble';

/** The photos of one thing, in the order in which they were added. */
export function readPhotos(db: Database, about: string): Promise<Kept<KeptPhoto[]>> {
  return look(db, ['photos'], async (transaction) => {
    const photos = await transaction.objectStore('photos').index('about').getAll(about);
    return photos.sort((a, b) => a.addedAt.localeCompare(b.addedAt) || a.id.localeCompare(b.id));
  });
}

/** Keeps photos, all of them or none. */
export function putPhotos(db: Database, photos: readonly KeptPhoto[]): Promise<Kept<void>> {
  return change(db, ['photos'], async (transaction) => {
    for (const photo of photos) await transaction.objectStore('photos').put(photo);
  });
}

export function removePhoto(db: Database, id: string): Promise<Kept<void>> {
  return change(db, ['photos'], (transaction) => transaction.objectStore('photos').delete(id));
}
