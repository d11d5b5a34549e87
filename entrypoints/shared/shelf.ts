import { readShelf } from '../../src/keep/packs';
import type { Kept } from '../../src/keep/trouble';
import { type ShelvedPack, type ShippedText, shelved } from '../../src/session/packs';
import { withKeep } from './keep';

/** Files of the extension's own folder packs/. */
const SHIPPED = ['trade.json'] as const;

/** The shipped packs and the user's own, read and checked. */
export async function loadShelf(): Promise<Kept<ShelvedPack[]>> {
  const [shipped, shelf] = await Promise.all([shippedTexts(), withKeep(readShelf)]);
  return shelf.ok ? { ok: true, value: shelved(shipped, shelf.value) } : shelf;
}

/** The packs that came with the program, by themselves. */
export async function loadShipped(): Promise<ShelvedPack[]> {
  return shelved(await shippedTexts(), { packs: [], switches: new Map() });
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
