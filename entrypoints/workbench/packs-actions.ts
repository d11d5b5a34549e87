import type { Database } from '../../src/keep/open';
import { type Removed, removePack, restorePack, switchPack } from '../../src/keep/packs';
import type { Kept } from '../../src/keep/trouble';
import { type PackCard, titleOf } from '../../src/session/pack-card';
import type { PacksActions, PacksState } from '../../src/view/workbench/PacksRoom';
import { announce } from '../shared/follow-messages';
import { withKeep } from '../shared/keep';
import type { BenchEngine } from './bench-engine';
import { type Installing, installInThread } from './installing';

/**
 * What can be done with the packs.
 * @param show told what changes on the shelf
 */
export function packsActions(
  engine: BenchEngine,
  show: (change: Partial<PacksState>) => void,
): { actions: PacksActions; start: () => void; follow: () => void; changed: (leaving?: string) => Promise<void> } {
  let shelf: readonly PackCard[] = [];
  let lastRemoved: (Removed & { title: string }) | null = null;
  let installing: Installing | null = null;
  /** The files that were chosen last: what is meant where the user says that going back is meant. */
  let chosen: File[] = [];

  /** How often another window has changed the shelf. */
  let follows = 0;

  /** @param mayLeave whether that pack may be there no more: whoever took it away knows */
  async function reload(mayLeave: (id: string) => boolean): Promise<void> {
    const before = follows;
    const read = await engine.ask({ about: 'shelf' });
    if (!read.ok) return show({ trouble: read.trouble });
    const there = new Set(read.value.map(({ id }) => id));
    // What another window has taken away while the shelf was read is not lost either.
    const gone = follows === before && shelf.some(({ id }) => !mayLeave(id) && !there.has(id));
    shelf = read.value;
    show({ shelf, trouble: gone ? 'gone' : null });
  }

  /** The engine and all other pages read the packs anew, then the shelf is shown as it is by now. */
  async function readAnew(leaving?: string): Promise<void> {
    announce({ type: 'packs-changed' });
    await followed((id) => id === leaving);
  }

  async function followed(mayLeave: (id: string) => boolean): Promise<void> {
    engine.packsChanged();
    await reload(mayLeave);
  }

  /** Does something to what is kept; a trouble is shown and nothing else changes. */
  async function change<T>(work: (db: Database) => Promise<Kept<T>>, leaving?: string): Promise<Kept<T>> {
    const done = await withKeep(work);
    if (done.ok) await readAnew(leaving);
    else show({ trouble: done.trouble });
    return done;
  }

  function install(files: File[], mayGoBack: boolean): void {
    const first = files[0];
    if (!first) return;
    installing?.cancel();
    chosen = files;
    show({ outcome: { state: 'reading', file: first.name, done: 0, all: first.size } });
    const mine = installInThread(files, mayGoBack, async (step) => {
      if (step.state === 'trouble') return show({ outcome: { state: 'none' }, trouble: step.trouble });
      if (step.state === 'installed') await readAnew();
      // Other files may have been chosen while the shelf was read.
      if (installing === mine) show({ outcome: step });
    });
    installing = mine;
  }

  const actions: PacksActions = {
    install: (files) => (files === 'the-same-going-back' ? install(chosen, true) : install(files, false)),
    cancelInstall() {
      installing?.cancel();
      installing = null;
      show({ outcome: { state: 'cancelled' } });
    },
    async switchPack(id, on) {
      await change((db) => switchPack(db, id, on));
    },
    async remove(id) {
      const card = shelf.find((pack) => pack.id === id);
      const done = await change((db) => removePack(db, id), id);
      if (!done.ok || !done.value) return;
      lastRemoved = { ...done.value, title: card ? titleOf(card) : id };
      show({ removed: lastRemoved.title, outcome: { state: 'none' } });
    },
    async undoRemove() {
      const back = lastRemoved;
      if (!back) return;
      const done = await change((db) => restorePack(db, back));
      if (!done.ok) return;
      lastRemoved = null;
      show({ removed: null });
    },
  };
  return {
    actions,
    start: () => void reload(() => true),
    changed: readAnew,
    // What another window has taken away is not lost: somebody wanted it so.
    follow() {
      follows += 1;
      void followed(() => true);
    },
  };
}
