import { browser } from 'wxt/browser';
import type { Database } from '../../src/keep/open';
import { putPacks, type Removed, removePack, restorePack, switchPack } from '../../src/keep/packs';
import type { Kept } from '../../src/keep/trouble';
import { localText } from '../../src/pack/local-text';
import { type Accepted, examine } from '../../src/session/install';
import type { Message } from '../../src/session/messages';
import type { ShelvedPack } from '../../src/session/packs';
import { workbenchTexts } from '../../src/text/catalogue/workbench';
import type { BenchActions, BenchState } from '../../src/view/workbench/Workbench';
import { loadShelf, withKeep } from '../shared/shelf';
import { readFiles } from './read-files';

/** What the page with the packs can do; `show` is told what changes on it. */
export function benchActions(show: (change: Partial<BenchState>) => void): {
  actions: BenchActions;
  start: () => void;
} {
  let shelf: ShelvedPack[] = [];
  let lastRemoved: (Removed & { title: string }) | null = null;

  async function reload(): Promise<void> {
    const read = await loadShelf();
    if (read.ok) shelf = read.value;
    show(read.ok ? { shelf, trouble: null } : { trouble: read.trouble });
  }

  /** Does something to what is kept, then shows it and tells the panels; a trouble is shown and nothing else changes. */
  async function change<T>(work: (db: Database) => Promise<Kept<T>>): Promise<Kept<T>> {
    const done = await withKeep(work);
    if (!done.ok) show({ trouble: done.trouble });
    else {
      await reload();
      const message: Message = { type: 'packs-changed' };
      // Nobody listening is no harm: a panel reads the packs when it opens.
      browser.runtime.sendMessage(message).catch(() => {});
    }
    return done;
  }

  const actions: BenchActions = {
    async install(files) {
      if (files.length === 0) return;
      show({ outcome: { state: 'checking' } });
      const { chosen, unreadable } = await readFiles(files);
      const examined = examine(chosen, shelf);
      const refused = [...unreadable, ...(examined.refused ?? [])];
      if (refused.length > 0 || !examined.accepted) return show({ outcome: { state: 'refused', refused } });
      const accepted = examined.accepted;
      const installedAt = new Date().toISOString();
      const packs = accepted.map(({ pack: { about }, text }) => ({
        id: about.id,
        edition: about.edition,
        text,
        installedAt,
      }));
      const done = await change((db) => putPacks(db, packs));
      show({ outcome: done.ok ? { state: 'installed', names: accepted.map(nameOf) } : { state: 'none' } });
    },
    async switchPack(id, on) {
      await change((db) => switchPack(db, id, on));
    },
    async remove(id) {
      const title = titleOf(shelf.find((pack) => pack.id === id));
      const done = await change((db) => removePack(db, id));
      if (!done.ok || !done.value) return;
      lastRemoved = { ...done.value, title };
      show({ removed: title, outcome: { state: 'none' } });
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

function titleOf(shelved: ShelvedPack | undefined): string {
  return shelved?.pack ? localText(shelved.pack.about.title, shelved.pack.about.language) : (shelved?.id ?? '');
}

function nameOf({ pack: { about }, replaces }: Accepted): string {
  const title = localText(about.title, about.language);
  const { fresh, replaced } = workbenchTexts.install;
  return replaces === null ? fresh(title, about.edition) : replaced(title, replaces, about.edition);
}
