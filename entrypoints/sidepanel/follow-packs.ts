import { browser } from 'wxt/browser';
import type { SessionEvent } from '../../src/session/events';
import { messageFrom } from '../../src/session/messages';
import { knowledgeOf } from '../../src/session/packs';
import { ourselves } from '../shared/ourselves';
import { loadShelf } from '../shared/shelf';

/** Tells what the packs know, now and whenever the workbench says that they have changed. */
export function followPacks(emit: (event: SessionEvent) => void): void {
  let asked = 0;
  const load = async () => {
    asked += 1;
    const mine = asked;
    const shelf = await loadShelf();
    // A later change was made in the meantime: its own load tells.
    if (mine !== asked) return;
    emit(
      shelf.ok
        ? { type: 'packsChanged', knowledge: knowledgeOf(shelf.value) }
        : { type: 'packsFailed', trouble: shelf.trouble },
    );
  };
  browser.runtime.onMessage.addListener((value, sender) => {
    const message = messageFrom(value, sender, ourselves());
    if (message?.type === 'packs-changed') void load();
  });
  void load();
}
