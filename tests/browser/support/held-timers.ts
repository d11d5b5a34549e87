import type { Tab } from '../../../src/cli/demo/driven';

// What a page does a pause later, it does when the test says so: two windows then meet at the same point on machines of
// any speed.

interface HoldingWindow {
  letTimersGo?: () => void;
}

/** From now on the page's timers of at least so many milliseconds don't run out, until they are let go. */
export async function holdTimers(tab: Tab, atLeast: number): Promise<void> {
  await tab.evaluate((least: number) => {
    const { setTimeout: set, clearTimeout: clear } = window;
    const held = new Map<number, () => void>();
    let last = 0;
    const later = (work: () => void, milliseconds = 0) => {
      if (milliseconds < least) return set(work, milliseconds);
      // Below zero, where no timer of the browser's own is.
      last -= 1;
      held.set(last, work);
      return last;
    };
    const never = (id: number) => {
      if (!held.delete(id)) clear(id);
    };
    Object.assign(window, { setTimeout: later, clearTimeout: never });
    (window as HoldingWindow).letTimersGo = () => {
      // Whoever has kept a timer's number may still clear it.
      Object.assign(window, { setTimeout: set });
      const due = [...held.values()];
      held.clear();
      for (const work of due) work();
    };
  }, atLeast);
}

/** Those that are held run out now; later ones in their own time. */
export async function letTimersGo(tab: Tab): Promise<void> {
  await tab.evaluate(() => (window as HoldingWindow).letTimersGo?.());
}
