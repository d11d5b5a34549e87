import { browser } from 'wxt/browser';
import { beginNewLog } from '../../src/keep/new-log';

const BEGUN = 'log-begun';

/** Once in each run of the browser, as early as can be: the one before may have ended in the middle of a write. */
export async function beginLog(): Promise<void> {
  if ((await browser.storage.session.get(BEGUN))[BEGUN]) return;
  await beginNewLog();
  await browser.storage.session.set({ [BEGUN]: true });
}
