import type { KeptLayer } from '../../src/keep/schema';
import type { Kept } from '../../src/keep/trouble';
import { loadShelf, type ShippedText } from '../../src/session/load-shelf';
import { type OpenedPack, type ShelvedPack, shelved } from '../../src/session/packs';
import { ENGINE } from './engine-version';
import { withKeep } from './keep';

/** Files of the extension's own folder packs/. */
const SHIPPED = ['trade.json'] as const;

/** The shipped packs and the user's own, ready to be asked. @param whole see loadShelf */
export async function readShelf(whole: boolean): Promise<Kept<ShelvedPack[]>> {
  const shipped = await shippedTexts();
  const shelf = await withKeep((db) => loadShelf(db, shipped, ENGINE, openText, whole));
  // Where nothing may be kept, as in Firefox's private windows, what came with the program speaks all the same.
  return !shelf.ok && shelf.trouble === 'denied' ? { ok: true, value: await opened(shipped) } : shelf;
}

/** The packs that came with the program, by themselves. */
export async function readShipped(): Promise<ShelvedPack[]> {
  return opened(await shippedTexts());
}

async function opened(texts: readonly ShippedText[]): Promise<ShelvedPack[]> {
  const ours = texts.map(async ({ file, text }) => ({ file, ...(await openText(text)) }));
  return shelved(await Promise.all(ours), [], new Map());
}

/** What checks packs is a third of the engine, and is fetched only where a pack doesn't lie ready. */
async function openText(text: string, layer: KeptLayer | null = null): Promise<OpenedPack> {
  if (layer) return (await import('../../src/session/open-layered')).openLayered(text, layer);
  const making = await import('../../src/session/open-text');
  return making.openText(text);
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
