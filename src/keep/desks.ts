import { change, look } from './change';
import { remember } from './known';
import type { Database } from './open';
import type { PackWithText } from './packs';
import type { KeptDesk, KeptKnown } from './schema';
import type { Kept } from './trouble';

/** A keeper's work on the next edition of one pack; an empty desk where there is none. */
export function readDesk(db: Database, id: string): Promise<Kept<KeptDesk>> {
  return look(db, ['desks'], async (transaction) => (await transaction.objectStore('desks').get(id)) ?? emptyDesk(id));
}

function emptyDesk(id: string): KeptDesk {
  return { id, proposals: [], decisions: [], published: null };
}

/** Changes a desk as it stands at that moment: two windows lose no decision of each other's. */
export function changeDesk(db: Database, id: string, work: (desk: KeptDesk) => KeptDesk): Promise<Kept<void>> {
  return change(db, ['desks'], async (transaction) => {
    const store = transaction.objectStore('desks');
    await store.put(work((await store.get(id)) ?? emptyDesk(id)));
  });
}

/** The key that seals a pack, by the pack's id, or null where it isn't here. */
export function keeperKeys(db: Database, id: string): Promise<Kept<CryptoKeyPair | null>> {
  return look(db, ['keys'], async (transaction) => (await transaction.objectStore('keys').get(id))?.keys ?? null);
}

/**
 * A new edition: the pack on the shelf, what is remembered of it, its key, and the files that wait to be saved, with a desk
 * that is cleared; all of it or nothing.
 * @param old the id under which the pack stood, which is another one where it is sealed for the first time: that goes
 */
export function keepEdition(
  db: Database,
  old: string,
  pack: PackWithText,
  known: KeptKnown,
  keys: CryptoKeyPair,
  files: readonly { name: string; text: string }[],
): Promise<Kept<void>> {
  return change(db, ['packs', 'texts', 'known', 'keys', 'desks'], async (transaction) => {
    const { text, ...head } = pack;
    await transaction.objectStore('packs').put(head);
    await transaction.objectStore('texts').put({ id: pack.id, text });
    await remember(transaction.objectStore('known'), known);
    await transaction.objectStore('keys').put({ id: pack.id, keys });
    const desks = transaction.objectStore('desks');
    // Sealed, it has another id; side by side the two would say everything twice.
    if (old !== pack.id) {
      await transaction.objectStore('packs').delete(old);
      await transaction.objectStore('texts').delete(old);
    }
    await desks.delete(old);
    await desks.put({ ...emptyDesk(pack.id), published: { edition: pack.edition, files } });
  });
}
