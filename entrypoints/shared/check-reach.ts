import { browser } from 'wxt/browser';
import type { CheckReach } from '../../src/session/following/check';
import { fetchCapped } from '../../src/sharing/subscribe/fetch-capped';
import { withKeep } from './keep';

/** How packs are checked from the background and from the workbench, never from both at once. */
export const checkReach: CheckReach = {
  withKeep,
  mayFetch,
  fetchText: (address, most) => fetchCapped(address, most),
  alone: (work) => navigator.locks.request('following', work),
  now: () => Date.now(),
  lot: () => Math.random(),
};

/** Whether the user's leave to fetch from such hosts holds. */
export async function mayFetch(pattern: string): Promise<boolean> {
  return browser.permissions.contains({ origins: [pattern] });
}
