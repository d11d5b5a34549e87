import { forgetKnown, readKnown, recallKnown } from '../../src/keep/known';
import type { Database } from '../../src/keep/open';
import { readShelf } from '../../src/keep/packs';
import type { KeptKnown } from '../../src/keep/schema';
import type { Kept } from '../../src/keep/trouble';
import { rememberedTold } from '../../src/session/remembered';
import { splitId } from '../../src/sharing/seal/pack-id';
import type { RememberedActions, RememberedState } from '../../src/view/workbench/packs/Remembered';
import { announce } from '../shared/follow-messages';
import { withKeep } from '../shared/keep';

/** What can be done about packs that are gone and still remembered. */
export function rememberedActions(show: (change: Partial<RememberedState>) => void): {
  actions: RememberedActions;
  read: () => Promise<void>;
} {
  let last: KeptKnown | null = null;

  async function read(): Promise<void> {
    const [known, shelf] = [await withKeep(readKnown), await withKeep(readShelf)];
    if (!known.ok) return show({ trouble: known.trouble });
    if (!shelf.ok) return show({ trouble: shelf.trouble });
    show({ packs: await rememberedTold(known.value, new Set(shelf.value.packs.map(({ id }) => id))) });
  }

  /** Does something to what is remembered; all our pages read it anew. */
  async function change<T>(work: (db: Database) => Promise<Kept<T>>): Promise<Kept<T>> {
    const done = await withKeep(work);
    show({ trouble: done.ok ? null : done.trouble });
    if (done.ok) announce({ type: 'following-changed' });
    return done;
  }

  const actions: RememberedActions = {
    async forget(id) {
      const done = await change((db) => forgetKnown(db, id));
      if (done.ok && done.value) {
        last = done.value;
        show({ forgotten: splitId(id).name });
      }
      await read();
    },
    async recall() {
      const forgotten = last;
      if (!forgotten) return;
      const done = await change((db) => recallKnown(db, forgotten));
      if (!done.ok) return;
      last = null;
      await read();
      show({ forgotten: null });
    },
  };
  return { actions, read };
}
