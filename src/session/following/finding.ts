import type { KeptFinding, KeptSubscription } from '../../keep/schema';
import { againstKnown, type KnownEditions } from '../../sharing/subscribe/against-known';
import type { FetchProblem } from '../../sharing/subscribe/fetch-capped';
import { type Notice, readNotice } from '../../sharing/subscribe/notice';
import { nextCheck } from '../../sharing/subscribe/schedule';

/**
 * Why a check came to nothing: of the way there; no-notice: something else stands at the address; other-pack: another
 * pack's notice; no-leave: the browser's leave to fetch from that host was taken back; gone-back: the host names an
 * earlier edition than was seen already.
 */
export type CheckProblem = FetchProblem | 'no-notice' | 'other-pack' | 'no-leave';

/** What a notice that came, or the reason why none came, means for a pack that is followed. */
export function findingOf(fetched: Notice | CheckProblem, known: KnownEditions, today: string): KeptFinding {
  if (typeof fetched === 'string') return { state: 'failed', problem: fetched };
  const says = againstKnown(fetched, known, today);
  if (says === 'other-pack') return { state: 'failed', problem: says };
  return says === 'same' || says === 'overdue' ? { state: says } : { state: says, edition: fetched.edition };
}

/** The text at an address as a notice. */
export function noticeIn(text: string): Notice | 'no-notice' {
  return readNotice(text) ?? 'no-notice';
}

/** A check begins: that is noted first, so that whoever is ended in the middle of it doesn't begin it again at once. */
export function begun(subscription: KeptSubscription, now: number): KeptSubscription {
  const triedAt = new Date(now).toISOString();
  return { ...subscription, triedAt, due: nextCheck(now, subscription.failures, 1) };
}

/** A check has come to its end. @param lot from 0 to 1 */
export function ended(
  subscription: KeptSubscription,
  finding: KeptFinding,
  now: number,
  lot: number,
): KeptSubscription {
  const failures = finding.state === 'failed' ? subscription.failures + 1 : 0;
  const checkedAt = finding.state === 'failed' ? subscription.checkedAt : new Date(now).toISOString();
  return { ...subscription, checkedAt, failures, finding, due: nextCheck(now, failures, lot) };
}
