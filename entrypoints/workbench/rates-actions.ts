import { putRate, readRates, removeRate } from '../../src/keep/rates';
import type { KeptRate } from '../../src/keep/schema';
import { NO_RATE_WRITTEN, writtenRate } from '../../src/price/written-rate';
import { keptRate } from '../../src/session/kept-rates';
import type { RatesActions, RatesState } from '../../src/view/workbench/prices/rates';
import type { BenchTrouble } from '../../src/view/workbench/trouble';
import { withKeep } from '../shared/keep';
import { today } from '../shared/today';

/** What the room of prices lends for keeping exchange rates. */
export interface RatesRoom {
  isPrivate: boolean;
  state: () => RatesState;
  show: (change: Partial<RatesState>) => void;
  trouble: (trouble: BenchTrouble) => void;
  /** Told once rates have changed, here and in what is kept. */
  changed: () => Promise<void>;
}

/** Exchange rates that the user types in. In a private window they are known as long as the page is open. */
export function ratesActions({ isPrivate, state, show, trouble, changed }: RatesRoom): {
  actions: RatesActions;
  reread: () => Promise<void>;
} {
  async function reread(): Promise<void> {
    if (isPrivate) return;
    const read = await withKeep(readRates);
    if (!read.ok) return trouble(read.trouble);
    show({ kept: read.value });
  }

  async function put(rate: KeptRate): Promise<boolean> {
    if (isPrivate) show({ kept: [rate, ...(state().kept ?? [])] });
    else {
      const done = await withKeep((db) => putRate(db, rate));
      if (!done.ok) {
        trouble(done.trouble);
        return false;
      }
      await reread();
    }
    await changed();
    return true;
  }

  const actions: RatesActions = {
    fill: (part) => show({ form: { ...state().form, ...part }, problems: [], saved: false }),
    async keep() {
      const found = writtenRate(state().form, today());
      if (!found.ok) return show({ problems: found.problems, saved: false });
      const rate = keptRate(found.rate, crypto.randomUUID(), new Date().toISOString());
      if (await put(rate)) show({ form: NO_RATE_WRITTEN, problems: [], saved: true, removed: null });
    },
    async remove(id) {
      const removed = state().kept?.find((one) => one.id === id) ?? null;
      if (isPrivate) show({ kept: state().kept?.filter((one) => one.id !== id) ?? [] });
      else {
        const done = await withKeep((db) => removeRate(db, id));
        if (!done.ok) return trouble(done.trouble);
        await reread();
      }
      show({ removed, saved: false });
      await changed();
    },
    async undoRemove() {
      const { removed } = state();
      if (removed && (await put(removed))) show({ removed: null });
    },
  };
  return { actions, reread };
}
