import { change, look } from './change';
import { remember } from './known';
import { GOES_ALONG, goAlong } from './new-id';
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

/** What an edition is made of: the pack's text and the desk, as they stood when it was made. */
export interface MadeOf {
  text: string;
  desk: KeptDesk;
}

export interface NewEdition {
  pack: PackWithText;
  known: KeptKnown;
  keys: CryptoKeyPair;
  files: readonly { name: string; text: string }[];
}

/**
 * A new edition: the pack on the shelf, what is remembered of it, its key, and the files that wait to be saved, with a desk
 * that is cleared; all of it or nothing. Sealed for the first time, the pack has another id, under which it goes on.
 * @returns stale: nothing is kept, for another window has decided something, or has published or taken an edition, since
 * this one was made. Two editions of one number would be two packs, and what was decided would be lost.
 */
export function keepEdition(db: Database, from: MadeOf, edition: NewEdition): Promise<Kept<'kept' | 'stale'>> {
  const { pack, known, keys, files } = edition;
  const stores = ['packs', 'texts', 'known', 'keys', 'desks', ...GOES_ALONG] as const;
  return change(db, [...stores], async (transaction) => {
    const [packs, texts] = [transaction.objectStore('packs'), transaction.objectStore('texts')];
    const [desks, remembered] = [transaction.objectStore('desks'), transaction.objectStore('known')];
    const old = from.desk.id;
    const desk = (await desks.get(old)) ?? emptyDesk(old);
    const highest = (await remembered.get(pack.id))?.edition ?? 0;
    const isSame = (await texts.get(old))?.text === from.text && JSON.stringify(desk) === JSON.stringify(from.desk);
    if (!isSame || highest >= pack.edition) return 'stale';
    const { text, ...head } = pack;
    await packs.put(head);
    await texts.put({ id: pack.id, text });
    await remember(remembered, known);
    await transaction.objectStore('keys').put({ id: pack.id, keys });
    await desks.delete(old);
    await desks.put({ ...emptyDesk(pack.id), published: { edition: pack.edition, files } });
    if (old === pack.id) return 'kept';
    // Side by side the two would say everything twice.
    await packs.delete(old);
    await texts.delete(old);
    await goAlong(transaction, old, pack.id);
    return 'kept';
  });
}
