import { putCompiled } from '../../src/keep/compiled';
import { putPacks, readShelf } from '../../src/keep/packs';
import type { Kept } from '../../src/keep/trouble';
import { type ChosenFile, examine, type InstallStep, type Standing } from '../../src/session/install';
import { ENGINE } from './engine-version';
import { withKeep } from './keep';
import { readText } from './read-text';
import { readShipped } from './shelf';

/**
 * Checks pack files and keeps them, all or none, telling how far that has come. Runs in a thread of its own, which may
 * be ended at any moment: the one change to what is kept is a single transaction, undone if it doesn't come to its end.
 */
export async function installFiles(
  files: readonly File[],
  installedAt: string,
  tell: (step: InstallStep) => void,
): Promise<void> {
  const shelf = await standing();
  if (!shelf.ok) return tell({ state: 'trouble', trouble: shelf.trouble });
  const together = files.reduce((all, { size }) => all + size, 0);
  const chosen = files.map(
    (file): ChosenFile => ({
      name: file.name,
      read: () => readText(file, together, (done) => tell({ state: 'reading', file: file.name, done, all: file.size })),
    }),
  );
  const { accepted, refused } = await examine(chosen, shelf.value, (file) => tell({ state: 'checking', file }));
  if (!accepted) return tell({ state: 'refused', refused });
  tell({ state: 'keeping' });
  const packs = accepted.map(({ id, edition, json, sealedBy, hash }) => {
    return { id, edition, text: json, installedAt, sealedBy, hash };
  });
  const kept = await withKeep((db) => putPacks(db, packs));
  if (!kept.ok) return tell({ state: 'trouble', trouble: kept.trouble });
  // The packs are installed by now. What was made of them may find no room, or be cut off: it is made anew then.
  const made = accepted.map(({ hash, compiled }) => ({ engine: ENGINE, hash, bytes: compiled }));
  await withKeep((db) => putCompiled(db, made));
  const installed = accepted.map(({ file: _, json: __, hash: ___, compiled: ____, ...rest }) => rest);
  tell({ state: 'installed', packs: installed });
}

async function standing(): Promise<Kept<Standing[]>> {
  const [shipped, kept] = await Promise.all([readShipped(), withKeep(readShelf)]);
  if (!kept.ok) return kept;
  const installed = kept.value.packs.map(({ id, edition, sealedBy = null }) => ({
    id,
    edition,
    shipped: false,
    sealedBy,
  }));
  const ours = shipped.map(({ id, edition, sealedBy }) => ({ id, edition, shipped: true, sealedBy }));
  return { ok: true, value: [...ours, ...installed] };
}
