import { browser } from 'wxt/browser';
import { storageMark } from '../../src/keep/storage-mark';
import { type StorageSeen, storageSeen } from '../../src/session/begun-anew';
import { withKeep } from '../shared/keep';
import { today } from '../shared/today';

const SEEN = 'storage-seen';

/** The day on which it was found that all that was kept here is gone, or null where it isn't, or has been read of. */
export async function lostOn(): Promise<string | null> {
  const mark = await withKeep((db) => storageMark(db, crypto.randomUUID()));
  if (!mark.ok) return null;
  const { [SEEN]: before } = await browser.storage.local.get(SEEN);
  const seen = storageSeen(before, mark.value, today());
  await browser.storage.local.set({ [SEEN]: seen });
  return seen.lost;
}

/** It has been read. */
export async function putAway(): Promise<void> {
  const { [SEEN]: seen } = (await browser.storage.local.get(SEEN)) as { [SEEN]?: StorageSeen };
  if (seen) await browser.storage.local.set({ [SEEN]: { ...seen, lost: null } });
}
