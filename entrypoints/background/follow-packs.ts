import { browser } from 'wxt/browser';
import { clearOffers, readSubscriptions } from '../../src/keep/subscriptions';
import { checkDue } from '../../src/session/following/check';
import { onCheckAlarm, setCheckAlarm } from '../shared/check-alarm';
import { checkReach } from '../shared/check-reach';
import { announce } from '../shared/follow-messages';
import { withKeep } from '../shared/keep';

/** Checks the packs that the user follows, when they are due. Nothing is fetched but their notices, and nothing installed. */
export function followPacks(): void {
  onCheckAlarm(() => void check());
  // A browser may forget an alarm while it is closed, or when it takes a new version of the program.
  browser.runtime.onStartup.addListener(() => {
    void withKeep(clearOffers);
    void beginAgain();
  });
  browser.runtime.onInstalled.addListener(() => void beginAgain());
}

async function check(): Promise<void> {
  if (await checkDue(checkReach)) announce({ type: 'following-changed' });
}

async function beginAgain(): Promise<void> {
  const followed = await withKeep(readSubscriptions);
  if (!followed.ok || followed.value.length === 0) return;
  await setCheckAlarm();
  await check();
}
