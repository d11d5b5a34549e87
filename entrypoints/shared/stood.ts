import { readKnown } from '../../src/keep/known';
import { readShelf } from '../../src/keep/packs';
import type { Kept } from '../../src/keep/trouble';
import type { Stood } from '../../src/session/install';
import { withKeep } from './keep';
import { readShipped } from './shelf';

/** What packs that come are held against, as it is kept at this moment. */
export async function readStood(): Promise<Kept<Stood>> {
  const [shipped, shelf, known] = await Promise.all([readShipped(), withKeep(readShelf), withKeep(readKnown)]);
  if (!shelf.ok) return shelf;
  if (!known.ok) return known;
  const installed = shelf.value.packs.map(({ id, edition, sealedBy = null, hash }) => {
    return { id, edition, shipped: false, sealedBy, ...(hash === undefined ? {} : { hash }) };
  });
  const ours = shipped.map(({ id, edition, sealedBy }) => ({ id, edition, shipped: true, sealedBy }));
  return { ok: true, value: { shelf: [...ours, ...installed], known: known.value } };
}
