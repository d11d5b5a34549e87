import { browser } from 'wxt/browser';
import type { KeptSubscription } from '../../src/keep/schema';
import { leaveOffer, readSubscriptions, removeSubscription, takeOffer } from '../../src/keep/subscriptions';
import { checkNow } from '../../src/session/following/check';
import type { OfferStep } from '../../src/session/following/offer-told';
import { subscriptionAddress } from '../../src/sharing/subscribe/address';
import { nextCheck } from '../../src/sharing/subscribe/schedule';
import type { FollowActions, FollowState } from '../../src/view/workbench/packs/state';
import { clearCheckAlarm, setCheckAlarm } from '../shared/check-alarm';
import { checkReach, mayFetch } from '../shared/check-reach';
import { announce } from '../shared/follow-messages';
import { withKeep } from '../shared/keep';
import type { Bench } from './bench';
import { lookInThread } from './looking';

/**
 * What can be done with packs that are followed.
 * @param titleOf a pack's title by its id
 */
export function followActions(
  { packs }: Pick<Bench, 'packs'>,
  state: () => FollowState,
  show: (change: Partial<FollowState>) => void,
  titleOf: (id: string) => string,
): { actions: FollowActions; read: () => Promise<void> } {
  let stop: (() => void) | null = null;

  async function read(): Promise<void> {
    const kept = await withKeep(readSubscriptions);
    if (!kept.ok) return show({ trouble: kept.trouble });
    const leaves = await Promise.all(kept.value.map(({ address }) => mayFetch(patternOf(address))));
    const noLeave = new Set(kept.value.flatMap(({ id }, at) => (leaves[at] ? [] : [id])));
    show({ subscriptions: kept.value, noLeave });
  }

  const followedBy = (id: string) => state().subscriptions.find((each) => each.id === id);

  /** Once the user has given leave. */
  async function look(pack: string | null, address: string, leave: Promise<boolean>): Promise<void> {
    const before = current;
    stop?.();
    show({ looking: { pack, step: { state: 'asking' } }, outcome: null, trouble: null });
    const mine = { address };
    current = mine;
    if (before) void giveBack(before.address);
    const granted = await leave.catch(() => false);
    // A yes that comes too late is leave for nothing.
    if (current !== mine) return granted ? giveBack(address) : undefined;
    if (!granted) return show({ looking: { pack, step: { state: 'not-begun', problem: 'no-leave' } } });
    if (pack) await read();
    if (current !== mine) return;
    stop = lookInThread(address, pack, (step: OfferStep) => {
      if (current !== mine) return;
      if (step.state === 'trouble') show({ looking: null, trouble: step.trouble });
      else show({ looking: { pack, step } });
      if (step.state === 'failed' || step.state === 'refused' || step.state === 'trouble') {
        current = null;
        void giveBack(address);
      }
    });
  }
  /** What is being looked at; another one from each time on. */
  let current: { address: string } | null = null;

  function end(): void {
    stop?.();
    stop = null;
    current = null;
  }

  /** Leave that nothing needs any more is given back. */
  async function giveBack(address: string): Promise<void> {
    const pattern = patternOf(address);
    const kept = await withKeep(readSubscriptions);
    if (!kept.ok) return;
    const isLookedAt = current !== null && patternOf(current.address) === pattern;
    if (!isLookedAt && !kept.value.some((each) => patternOf(each.address) === pattern))
      await browser.permissions.remove({ origins: [pattern] }).catch(() => false);
    if (kept.value.length === 0) await clearCheckAlarm();
  }

  function offered() {
    const step = state().looking?.step;
    return step?.state === 'offered' ? step.told : null;
  }

  const actions: FollowActions = {
    look(typed) {
      const read = subscriptionAddress(typed);
      if ('problem' in read)
        return show({ looking: { pack: null, step: { state: 'not-begun', problem: read.problem } }, outcome: null });
      void look(null, read.address, browser.permissions.request({ origins: [read.pattern] }));
    },
    check(id) {
      const followed = followedBy(id);
      if (!followed) return;
      const leave = browser.permissions.request({ origins: [patternOf(followed.address)] });
      void (async () => {
        show({ checking: id, outcome: null, trouble: null });
        await leave.catch(() => false);
        await checkNow(checkReach, id);
        announce({ type: 'following-changed' });
        await read();
        show({ checking: null });
      })();
    },
    see(id) {
      const followed = followedBy(id);
      if (followed)
        void look(id, followed.address, browser.permissions.request({ origins: [patternOf(followed.address)] }));
    },
    cancel() {
      const looking = state().looking;
      const before = current;
      end();
      if (before) void giveBack(before.address);
      show({ looking: null });
      if (looking?.step.state !== 'not-begun') void read();
    },
    async take() {
      const told = offered();
      if (!told) return;
      const now = Date.now();
      const done = await withKeep((db) =>
        takeOffer(db, told.about.id, told.hash, {
          at: new Date(now).toISOString(),
          due: nextCheck(now, 0, Math.random()),
        }),
      );
      end();
      if (!done.ok || done.value !== 'taken') void giveBack(told.address);
      if (!done.ok) return show({ looking: null, trouble: done.trouble });
      const { title, edition } = told.about;
      show({
        looking: null,
        outcome: done.value === 'taken' ? { state: 'taken', title, edition } : { state: done.value },
      });
      await setCheckAlarm();
      announce({ type: 'following-changed' });
      await read();
      await packs.changed();
    },
    async leave() {
      const told = offered();
      if (!told) return;
      const done = await withKeep((db) => leaveOffer(db, told.about.id));
      end();
      if (!done.ok) return show({ looking: null, trouble: done.trouble });
      const { title, edition } = told.about;
      show({ looking: null, outcome: { state: 'left', title, edition } });
      announce({ type: 'following-changed' });
      await giveBack(told.address);
      await read();
    },
    async stop(id) {
      const followed = followedBy(id);
      if (!followed) return;
      const done = await withKeep((db) => removeSubscription(db, id));
      if (!done.ok) return show({ trouble: done.trouble });
      if (state().looking?.pack === id) {
        end();
        show({ looking: null });
      }
      show({ outcome: { state: 'stopped', title: titleOf(id) } });
      announce({ type: 'following-changed' });
      await giveBack(followed.address);
      await read();
    },
  };
  return { actions, read };
}

/** Of an address that was read before it was kept. */
function patternOf(address: KeptSubscription['address']): string {
  const read = subscriptionAddress(address);
  return 'pattern' in read ? read.pattern : '';
}
