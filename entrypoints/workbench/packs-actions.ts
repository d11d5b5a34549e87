import { browser } from 'wxt/browser';
import type { Database } from '../../src/keep/open';
import { type Removed, removePack, restorePack, switchPack } from '../../src/keep/packs';
import type { Kept } from '../../src/keep/trouble';
import type { Message } from '../../src/session/messages';
import { type PackCard, titleOf } from '../../src/session/pack-card';
import type { PacksActions, PacksState } from '../../src/view/workbench/PacksRoom';
import { withKeep } from '../shared/keep';
import type { BenchEngine } from './bench-engine';
import { type Installing, installInThread } from './installing';

/**
 * What can be done with the packs.
 * @param show told what changes in the room
 * @param changed told once the engine has been told that other packs speak by now
 */
export function packsActions(
  engine: BenchEngine,
  show: (change: Partial<PacksState>) => void,
  changed: () => void,
): { actions: PacksActions; start: () => void } {
  let shelf: readonly PackCard[] = [];
  let lastRemoved: (Removed & { title: string }) | null = null;
  let installing: Installing | null = null;

  /** @param leaving the id of a pack that is not expected to be there any more */
  async function reload(leaving?: string): Promise<void> {
    const read = await engine.ask({ about: 'shelf' });
    if (!read.ok) return show({ trouble: read.trouble });
    const there = new Set(read.value.map(({ id }) => id));
    const gone = shelf.some(({ id }) => id !== leaving && !there.has(id));
    shelf = read.value;
    show({ shelf, trouble: gone ? 'gone' : null });
  }

  /** The engine and the panels read the packs anew, then the shelf is shown as it is by now. */
  async function announce(leaving?: string): Promise<void> {
    engine.packsChanged();
    const message: Message = { type: 'packs-changed' };
    // Nobody listening is no harm: a panel reads the packs when it opens.
    browser.runtime.sendMessage(message).catch(() => {});
    changed();
    await reload(leaving);
  }

  /** Does something to what is kept; a trouble is shown and nothing else changes. */
  async function change<T>(work: (db: Database) => Promise<Kept<T>>, leaving?: string): Promise<Kept<T>> {
    const done = await withKeep(work);
    if (done.ok) await announce(leaving);
    else show({ trouble: done.trouble });
    return done;
  }

  const actions: PacksActions = {
    install(files) {
      const first = files[0];
      if (!first) return;
      installing?.cancel();
      show({ outcome: { state: 'reading', file: first.name, done: 0, all: first.size } });
      installing = installInThread(files, async (step) => {
        if (step.state === 'trouble') return show({ outcome: { state: 'none' }, trouble: step.trouble });
        if (step.state === 'installed') await announce();
        show({ outcome: step });
      });
    },
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
  return { actions, start: () => void reload() };
}
