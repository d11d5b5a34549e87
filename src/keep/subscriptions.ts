import { change, look } from './change';
import { remember } from './known';
import type { Database } from './open';
import type { KeptOffer, KeptSubscription } from './schema';
import type { Kept } from './trouble';

/** All that is followed, by the packs' ids. */
export function readSubscriptions(db: Database): Promise<Kept<KeptSubscription[]>> {
  return look(db, ['subscriptions'], (transaction) => transaction.objectStore('subscriptions').getAll());
}

/**
 * Changes one subscription as it stands at that moment: another window or the background may have changed it since it
 * was read. @returns the changed one, or null where it is followed no more
 */
export function changeSubscription(
  db: Database,
  id: string,
  work: (subscription: KeptSubscription) => KeptSubscription,
): Promise<Kept<KeptSubscription | null>> {
  return change(db, ['subscriptions'], async (transaction) => {
    const store = transaction.objectStore('subscriptions');
    const now = await store.get(id);
    if (!now) return null;
    const changed = work(now);
    await store.put(changed);
    return changed;
  });
}

/** Follows a pack no longer; the pack itself stays, and what was fetched of a newer edition goes. */
export function removeSubscription(db: Database, id: string): Promise<Kept<void>> {
  return change(db, ['subscriptions', 'offers'], async (transaction) => {
    await transaction.objectStore('subscriptions').delete(id);
    await transaction.objectStore('offers').delete(id);
  });
}

/** Keeps an edition that waits for a yes, in the place of one that waited before. */
export function putOffer(db: Database, offer: KeptOffer): Promise<Kept<void>> {
  return change(db, ['offers'], async (transaction) => {
    await transaction.objectStore('offers').put(offer);
  });
}

/**
 * taken: it is the pack from now on. gone: it waits no more, for it was taken or left in another window. stale: the pack
 * or what is known of it is another one by now than when the edition was looked at, so that it must be looked at anew.
 */
export type TakingOutcome = 'taken' | 'gone' | 'stale';

/**
 * The user's yes: pack, text, what is remembered and where it is followed, all of it or nothing.
 * @param hash of the text that the user was told about; @param due when it is checked for the first time
 */
export function takeOffer(
  db: Database,
  id: string,
  hash: string,
  now: { at: string; due: number },
): Promise<Kept<TakingOutcome>> {
  return change(db, ['offers', 'packs', 'texts', 'known', 'subscriptions'], async (transaction) => {
    const [offers, packs] = [transaction.objectStore('offers'), transaction.objectStore('packs')];
    const [known, subscriptions] = [transaction.objectStore('known'), transaction.objectStore('subscriptions')];
    const offer = await offers.get(id);
    if (offer?.pack.hash !== hash) return 'gone';
    await offers.delete(id);
    const [pack, remembered] = [await packs.get(id), await known.get(id)];
    const judged = offer.judgedAgainst;
    const isStale =
      (pack?.hash ?? null) !== offer.replaces ||
      remembered?.hash !== judged?.hash ||
      remembered?.edition !== judged?.edition;
    if (isStale) return 'stale';
    await packs.put({ ...offer.pack, installedAt: now.at });
    await transaction.objectStore('texts').put({ id, text: offer.text });
    if (offer.remember) await remember(known, offer.remember);
    await subscriptions.put(followed(offer, now, await subscriptions.get(id)));
    return 'taken';
  });
}

function followed(
  { id, pack, subscription: { address, sha256 } }: KeptOffer,
  { at, due }: { at: string; due: number },
  before: KeptSubscription | undefined,
): KeptSubscription {
  return {
    ...{ id, address, since: before?.address === address ? before.since : at, triedAt: at, checkedAt: at, due },
    ...{ failures: 0, finding: { state: 'same' }, file: { edition: pack.edition, sha256 }, left: null },
  };
}

/** The user's no: what was fetched goes, and of a pack that is followed that edition isn't offered again. */
export function leaveOffer(db: Database, id: string): Promise<Kept<void>> {
  return change(db, ['offers', 'subscriptions'], async (transaction) => {
    const [offers, subscriptions] = [transaction.objectStore('offers'), transaction.objectStore('subscriptions')];
    const [offer, subscription] = [await offers.get(id), await subscriptions.get(id)];
    await offers.delete(id);
    if (offer && subscription) await subscriptions.put({ ...subscription, left: offer.pack.edition });
  });
}

/** What waited for a yes when the browser was closed is fetched anew, if it is still wanted. */
export function clearOffers(db: Database): Promise<Kept<void>> {
  return change(db, ['offers'], (transaction) => transaction.objectStore('offers').clear());
}
