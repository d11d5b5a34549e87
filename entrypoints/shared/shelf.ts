import { type Database, openKeep } from '../../src/keep/open';
import { readShelf } from '../../src/keep/packs';
import type { Kept } from '../../src/keep/trouble';
import { type ShelvedPack, type ShippedText, shelved } from '../../src/session/packs';

/** Files of the extension's own folder packs/. */
const SHIPPED = ['trade.json'] as const;

/** Runs one piece of work on this browser's database and closes it: no page keeps it open while it only shows. */
export async function withKeep<T>(work: (db: Database) => Promise<Kept<T>>): Promise<Kept<T>> {
  const keep = await openKeep();
  if (!keep.ok) return keep;
  try {
    return await work(keep.value);
  } finally {
    keep.value.close();
  }
}

/** The shipped packs and the user's own, read and checked. */
export async function loadShelf(): Promise<Kept<ShelvedPack[]>> {
  const [shipped, shelf] = await Promise.all([shippedTexts(), withKeep(readShelf)]);
  return shelf.ok ? { ok: true, value: shelved(shipped, shelf.value) } : shelf;
}

/** Empty text where a file of ours can't be read: the shelf then shows it as a pack that can't be read. */
function shippedTexts(): Promise<ShippedText[]> {
  return Promise.all(
    SHIPPED.map(async (file) => {
      try {
        return { file, text: await (await fetch(`/packs/${file}`)).text() };
      } catch {
        return { file, text: '' };
      }
    }),
  );
}
