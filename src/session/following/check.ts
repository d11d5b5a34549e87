import { readKnown } from '../../keep/known';
import type { Database } from '../../keep/open';
import { readShelf } from '../../keep/packs';
import type { KeptSubscription } from '../../keep/schema';
import { changeSubscription, readSubscriptions } from '../../keep/subscriptions';
import type { Kept } from '../../keep/trouble';
import { subscriptionAddress } from '../../sharing/subscribe/address';
import type { KnownEditions } from '../../sharing/subscribe/against-known';
import type { Fetched } from '../../sharing/subscribe/fetch-capped';
import { LARGEST_NOTICE, type Notice } from '../../sharing/subscribe/notice';
import { isDue } from '../../sharing/subscribe/schedule';
import { begun, type CheckProblem, ended, findingOf, noticeIn } from './finding';

/** What a check needs of the world around it. */
export interface CheckReach {
  withKeep<T>(work: (db: Database) => Promise<Kept<T>>): Promise<Kept<T>>;
  /** Whether the browser lets us fetch from hosts of that pattern: asked before each fetch, which would else leave a trace. */
  mayFetch(pattern: string): Promise<boolean>;
  fetchText(address: string, most: number): Promise<Fetched>;
  /** Does the work while no other page or worker of ours checks anything. */
  alone<T>(work: () => Promise<T>): Promise<T>;
  /** Milliseconds since 1970. */
  now(): number;
  /** From 0 to 1. */
  lot(): number;
}

/** Checks all that is due, one after the other. @returns whether anything was found that wasn't known before */
export async function checkDue(reach: CheckReach): Promise<boolean> {
  const read = await reach.withKeep(readSubscriptions);
  if (!read.ok) return false;
  let changed = false;
  for (const { id } of read.value) changed = (await checkOne(reach, id, (now, due) => isDue(now, due))) || changed;
  return changed;
}

/** Checks one pack now, because the user asked for it. */
export async function checkNow(reach: CheckReach, id: string): Promise<boolean> {
  return checkOne(reach, id, () => true);
}

function checkOne(reach: CheckReach, id: string, when: (now: number, due: number) => boolean): Promise<boolean> {
  return reach.alone(async () => {
    // Read again: whoever had the turn before may have checked it.
    const now = reach.now();
    let isMeant = false;
    const tried = await reach.withKeep((db) =>
      changeSubscription(db, id, (there) => {
        isMeant = when(now, there.due);
        return isMeant ? begun(there, now) : there;
      }),
    );
    if (!tried.ok || !tried.value || !isMeant) return false;
    const fetched = await noticeAt(reach, tried.value.address);
    const known = await reach.withKeep((db) => knownOf(db, tried.value as KeptSubscription));
    if (!known.ok) return false;
    const finding = findingOf(fetched, known.value, new Date(now).toISOString().slice(0, 10));
    const noted = await reach.withKeep((db) =>
      changeSubscription(db, id, (there) => ended(there, finding, reach.now(), reach.lot())),
    );
    return noted.ok && noted.value !== null;
  });
}

async function noticeAt(reach: CheckReach, address: string): Promise<Notice | CheckProblem> {
  const read = subscriptionAddress(address);
  if ('problem' in read) return 'no-notice';
  if (!(await reach.mayFetch(read.pattern))) return 'no-leave';
  const fetched = await reach.fetchText(read.address, LARGEST_NOTICE);
  return fetched.ok ? noticeIn(fetched.text) : fetched.problem;
}

async function knownOf(db: Database, { id, file }: KeptSubscription): Promise<Kept<KnownEditions>> {
  const [shelf, all] = [await readShelf(db), await readKnown(db)];
  if (!shelf.ok) return shelf;
  if (!all.ok) return all;
  const pack = shelf.value.packs.find((each) => each.id === id);
  const active = pack?.edition ?? 0;
  const highest = Math.max(all.value.get(id)?.edition ?? 0, active);
  const value = {
    active,
    highest,
    file: file.edition === highest ? file.sha256 : null,
    expires: pack?.expires ?? null,
  };
  return { ok: true, value: { pack: id, ...value } };
}
