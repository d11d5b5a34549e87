import { putCompiled } from '../../src/keep/compiled';
import { putPacks } from '../../src/keep/packs';
import { type ChosenFile, examine, type InstallStep } from '../../src/session/install';
import { ENGINE } from './engine-version';
import { withKeep } from './keep';
import { readText } from './read-text';
import { readStood } from './stood';

export interface Installation {
  /** ISO 8601 instant. */
  installedAt: string;
  /** The user has said that earlier editions than those that were here are meant. */
  mayGoBack: boolean;
}

/**
 * Checks pack files and keeps them, all or none, telling how far that has come. Runs in a thread of its own, which may
 * be ended at any moment: the one change to what is kept is a single transaction, undone if it doesn't come to its end.
 */
export async function installFiles(
  files: readonly File[],
  { installedAt, mayGoBack }: Installation,
  tell: (step: InstallStep) => void,
): Promise<void> {
  const stood = await readStood();
  if (!stood.ok) return tell({ state: 'trouble', trouble: stood.trouble });
  const together = files.reduce((all, { size }) => all + size, 0);
  const chosen = files.map(
    (file): ChosenFile => ({
      name: file.name,
      read: () => readText(file, together, (done) => tell({ state: 'reading', file: file.name, done, all: file.size })),
    }),
  );
  const { accepted, earlier, refused } = await examine(chosen, stood.value, (file) =>
    tell({ state: 'checking', file }),
  );
  if (!accepted) return tell({ state: 'refused', refused });
  if (earlier.length > 0 && !mayGoBack) return tell({ state: 'going-back', packs: earlier });
  tell({ state: 'keeping' });
  const packs = accepted.map(({ id, edition, json, sealedBy, hash, expires }) => {
    return { id, edition, text: json, installedAt, sealedBy, hash, expires };
  });
  const known = accepted.flatMap(({ remember }) => remember ?? []);
  const kept = await withKeep((db) => putPacks(db, packs, known));
  if (!kept.ok) return tell({ state: 'trouble', trouble: kept.trouble });
  // The packs are installed by now. What was made of them may find no room, or be cut off: it is made anew then.
  const made = accepted.map(({ hash, compiled }) => ({ engine: ENGINE, hash, bytes: compiled }));
  await withKeep((db) => putCompiled(db, made));
  const installed = accepted.map(({ id, title, edition, sealedBy, replaces, handedOver }) => {
    return { id, title, edition, sealedBy, replaces, handedOver };
  });
  tell({ state: 'installed', packs: installed });
}
