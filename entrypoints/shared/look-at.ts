import { noteHash, readShelf, readText } from '../../src/keep/packs';
import { putOffer } from '../../src/keep/subscriptions';
import { contentHash } from '../../src/pack/compiled/content-hash';
import type { OfferStep } from '../../src/session/following/offer-told';
import { type Here, offering } from '../../src/session/following/offering';
import { fetchCapped } from '../../src/sharing/subscribe/fetch-capped';
import { withKeep } from './keep';
import { readStood } from './stood';

/**
 * Fetches and proves what an address publishes and lets it wait for the user's yes, in a thread of its own, which may be
 * ended at any moment. The page has made sure before that there is leave to fetch from there.
 */
export async function lookAt(address: string, followed: string | null, tell: (step: OfferStep) => void): Promise<void> {
  tell({ state: 'asking' });
  const stood = await readStood();
  if (!stood.ok) return tell({ state: 'trouble', trouble: stood.trouble });
  const offered = await offering(address, followed, {
    fetchText: (from, most, progress) => fetchCapped(from, most, { progress }),
    here,
    stood: stood.value,
    tell,
  });
  if (offered.state !== 'offered') return tell(offered);
  const kept = await withKeep((db) => putOffer(db, offered.offer));
  tell(kept.ok ? { state: 'offered', told: offered.told } : { state: 'trouble', trouble: kept.trouble });
}

/** What stands under an id, its hash noted if it wasn't yet; null where nothing does or can be read. */
async function here(id: string): Promise<Here | null> {
  const shelf = await withKeep(readShelf);
  const pack = shelf.ok ? shelf.value.packs.find((each) => each.id === id) : undefined;
  const text = pack && (await withKeep((db) => readText(db, id)));
  if (!pack || !text?.ok || text.value === null) return null;
  const hash = await contentHash(text.value);
  if (pack.hash !== hash) await withKeep((db) => noteHash(db, pack, hash));
  return { edition: pack.edition, json: text.value, hash };
}
