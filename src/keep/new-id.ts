import type { IDBPObjectStore } from 'idb';
import type { Schema } from './schema';

/** Where else something is kept of a pack by its id. */
export const GOES_ALONG = ['layers', 'switches', 'subscriptions', 'offers', 'observations'] as const;

type Moved = (typeof GOES_ALONG)[number];

interface Writing {
  objectStore<Name extends Moved>(name: Name): IDBPObjectStore<Schema, Name[], Name, 'readwrite'>;
}

/**
 * Within a change: a pack goes on under another id, and with it what the user has corrected of it, whether it speaks, and
 * the prices that were seen of its models. Where it was followed it is followed no longer: what is published there has the
 * old id.
 */
export async function goAlong(transaction: Writing, old: string, id: string): Promise<void> {
  const [layers, switches] = [transaction.objectStore('layers'), transaction.objectStore('switches')];
  const [layer, position] = [await layers.get(old), await switches.get(old)];
  if (layer) await layers.put({ ...layer, id });
  if (position) await switches.put({ ...position, id });
  await layers.delete(old);
  await switches.delete(old);
  await transaction.objectStore('subscriptions').delete(old);
  await transaction.objectStore('offers').delete(old);
  const observations = transaction.objectStore('observations');
  const seen = (await observations.getAll()).filter(({ model }) => model.startsWith(`${old}/`));
  await Promise.all(seen.map((one) => observations.put({ ...one, model: id + one.model.slice(old.length) })));
}
