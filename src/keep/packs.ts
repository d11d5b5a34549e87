import { change, look } from './change';
import { recall, remember } from './known';
import type { Database } from './open';
import type { KeptKnown, KeptPack, KeptSubscription } from './schema';
import type { Kept } from './trouble';

/** All installed packs, and for every pack that was ever switched whether it is on. */
export interface Shelf {
  packs: KeptPack[];
  switches: ReadonlyMap<string, boolean>;
}

/** A pack with its text, as it is put on the shelf. */
export type PackWithText = KeptPack & { text: string };

/** A pack that was taken off the shelf, so that it can be put back as it was. */
export interface Removed {
  pack: PackWithText;
  on: boolean;
  /** Where it was followed, or null. */
  subscription: KeptSubscription | null;
  /** What was remembered of it, or null; it stays, but can be forgotten while the pack is not here. */
  known: KeptKnown | null;
}

export function readShelf(db: Database): Promise<Kept<Shelf>> {
  return look(db, ['packs', 'switches'], async (transaction) => {
    const packs = await transaction.objectStore('packs').getAll();
    const switches = await transaction.objectStore('switches').getAll();
    return { packs, switches: new Map(switches.map(({ id, on }) => [id, on])) };
  });
}

/** The text of one pack, or null where there is no such pack. */
export function readText(db: Database, id: string): Promise<Kept<string | null>> {
  return look(db, ['texts'], async (transaction) => (await transaction.objectStore('texts').get(id))?.text ?? null);
}

/**
 * Puts packs on the shelf, all of them or none; one with the same id is replaced.
 * @param known what is to be remembered of those that are sealed, kept with them or not at all
 */
export function putPacks(
  db: Database,
  packs: readonly PackWithText[],
  known: readonly KeptKnown[] = [],
): Promise<Kept<void>> {
  return change(db, ['packs', 'texts', 'known'], async (transaction) => {
    for (const { text, ...pack } of packs) {
      await transaction.objectStore('packs').put(pack);
      await transaction.objectStore('texts').put({ id: pack.id, text });
    }
    for (const one of known) await remember(transaction.objectStore('known'), one);
  });
}

/** Notes what the hash of a pack's text is, unless another text has come in its place since. */
export function noteHash(db: Database, pack: KeptPack, hash: string): Promise<Kept<void>> {
  return change(db, ['packs'], async (transaction) => {
    const packs = transaction.objectStore('packs');
    const now = await packs.get(pack.id);
    if (now?.edition === pack.edition && now.installedAt === pack.installedAt) await packs.put({ ...now, hash });
  });
}

/**
 * Takes a pack off the shelf, follows it no longer and forgets how it was switched; what is known of it stays.
 * @returns what was taken, or null where nothing was
 */
export function removePack(db: Database, id: string): Promise<Kept<Removed | null>> {
  const stores = ['packs', 'texts', 'switches', 'subscriptions', 'offers', 'known'] as const;
  return change(db, [...stores], async (transaction) => {
    const [packs, texts] = [transaction.objectStore('packs'), transaction.objectStore('texts')];
    const [switches, subscriptions] = [transaction.objectStore('switches'), transaction.objectStore('subscriptions')];
    const pack = await packs.get(id);
    const text = (await texts.get(id))?.text ?? '';
    const on = (await switches.get(id))?.on ?? true;
    await packs.delete(id);
    await texts.delete(id);
    const subscription = (await subscriptions.get(id)) ?? null;
    await switches.delete(id);
    await subscriptions.delete(id);
    await transaction.objectStore('offers').delete(id);
    const known = (await transaction.objectStore('known').get(id)) ?? null;
    return pack ? { pack: { ...pack, text }, on, subscription, known } : null;
  });
}

/** Puts a pack back as it was before it was removed. */
export function restorePack(db: Database, removed: Removed): Promise<Kept<void>> {
  const { on, subscription, known } = removed;
  const { text, ...pack } = removed.pack;
  return change(db, ['packs', 'texts', 'switches', 'subscriptions', 'known'], async (transaction) => {
    if (known) await recall(transaction.objectStore('known'), known);
    if (subscription) await transaction.objectStore('subscriptions').put(subscription);
    await transaction.objectStore('packs').put(pack);
    await transaction.objectStore('texts').put({ id: pack.id, text });
    await transaction.objectStore('switches').put({ id: pack.id, on });
  });
}

export function switchPack(db: Database, id: string, on: boolean): Promise<Kept<void>> {
  return change(db, ['switches'], async (transaction) => {
    await transaction.objectStore('switches').put({ id, on });
  });
}
