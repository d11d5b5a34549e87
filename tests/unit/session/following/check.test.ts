import 'fake-indexeddb/auto';
import { afterEach, describe, expect, it } from 'vitest';
import { type Database, openKeep } from '../../../../src/keep/open';
import type { KeptSubscription } from '../../../../src/keep/schema';
import { putOffer, readSubscriptions, takeOffer } from '../../../../src/keep/subscriptions';
import { type CheckReach, checkDue, checkNow } from '../../../../src/session/following/check';
import { takingTurns } from '../../../../src/session/in-turn';
import type { Fetched } from '../../../../src/sharing/subscribe/fetch-capped';

const DAY = 86_400_000;
const START = Date.parse('2026-06-01T10:00:00Z');
const sha256 = 'a'.repeat(64);
const notice = (edition: number, change = {}) =>
  JSON.stringify({ notice: 1, pack: 'club', edition, file: { sha256, bytes: 9 }, changes: [], ...change });

let count = 0;
const open: Database[] = [];
afterEach(() => {
  for (const db of open.splice(0)) db.close();
});

/** A browser that follows one pack in edition 5, first due at the start, and a host that answers so. */
async function following(answer: () => Fetched | Promise<Fetched>, expires: string | null = null) {
  count += 1;
  const keep = await openKeep(`check-test-${count}`);
  if (!keep.ok) throw new Error(keep.trouble);
  const db = keep.value;
  open.push(db);
  const pack = { id: 'club', edition: 5, installedAt: '', hash: 'h', expires };
  await putOffer(db, {
    ...{ id: 'club', pack, text: '{}', judgedAgainst: null, replaces: null },
    remember: { id: 'club', key: 'k', edition: 5, hash: 'h', next: null, earlier: [] },
    subscription: { address: 'https://packs.example/club', sha256 },
  });
  await takeOffer(db, 'club', 'h', { at: '2026-05-31T10:00:00.000Z', due: START });
  const world = { now: START, leave: true, asked: [] as string[] };
  const reach: CheckReach = {
    withKeep: (work) => work(db),
    mayFetch: async (pattern) => world.leave && pattern === 'https://packs.example/*',
    async fetchText(address) {
      world.asked.push(address);
      return answer();
    },
    alone: takingTurns(),
    now: () => world.now,
    lot: () => 0,
  };
  const state = async (): Promise<KeptSubscription> => {
    const read = await readSubscriptions(db);
    if (!read.ok || !read.value[0]) throw new Error('nothing is followed');
    return read.value[0];
  };
  return { reach, world, state };
}

const says = (text: string): Fetched => ({ ok: true, text, bytes: text.length });

describe('a check of what is followed', () => {
  it('is made when it is due, and once a day at most', async () => {
    const { reach, world, state } = await following(() => says(notice(5)));
    world.now = START - 1;
    expect(await checkDue(reach)).toBe(false);
    world.now = START;
    expect(await checkDue(reach)).toBe(true);
    expect(await state()).toMatchObject({ finding: { state: 'same' }, checkedAt: '2026-06-01T10:00:00.000Z' });
    for (const hours of [1, 12, 23]) {
      world.now = START + hours * 3_600_000;
      await checkDue(reach);
    }
    expect(world.asked).toHaveLength(1);
    world.now = START + DAY;
    await checkDue(reach);
    expect(world.asked).toHaveLength(2);
  });

  it('is made at any time where the user asks for it', async () => {
    const { reach, world, state } = await following(() => says(notice(6)));
    world.now = START - DAY / 2;
    await checkNow(reach, 'club');
    await checkNow(reach, 'club');
    expect(world.asked).toHaveLength(2);
    expect((await state()).finding).toEqual({ state: 'newer', edition: 6 });
  });

  it('is made once where two windows and the background come to it together', async () => {
    const { reach, world } = await following(() => says(notice(5)));
    await Promise.all([checkDue(reach), checkDue(reach), checkDue(reach)]);
    expect(world.asked).toHaveLength(1);
  });

  it('that is cut off in the middle isn’t made again that day', async () => {
    let fetched: () => void = () => {};
    const { reach, world } = await following(() => {
      fetched();
      return new Promise<never>(() => {});
    });
    // The worker ends while it waits for the host: nothing after that line runs.
    const inFlight = new Promise<void>((resolve) => {
      fetched = resolve;
    });
    void checkDue(reach);
    await inFlight;
    const nextLife = { ...reach, alone: takingTurns() };
    world.now = START + DAY - 1;
    await checkDue(nextLife);
    expect(world.asked).toHaveLength(1);
  });

  it('goes longer and longer apart while it fails, says why, and keeps what it knew last', async () => {
    let answer: Fetched = { ok: false, problem: 'unreachable' };
    const { reach, world, state } = await following(() => answer);
    const days: number[] = [];
    for (let day = 0; day < 20; day += 1) {
      world.now = START + day * DAY;
      if (await checkDue(reach)) days.push(day);
    }
    expect(days).toEqual([0, 1, 3, 7, 14]);
    expect(await state()).toMatchObject({ failures: 5, finding: { state: 'failed', problem: 'unreachable' } });
    expect((await state()).checkedAt).toBe('2026-05-31T10:00:00.000Z');
    answer = says(notice(5));
    await checkNow(reach, 'club');
    expect(await state()).toMatchObject({ failures: 0, finding: { state: 'same' } });
  });

  it('asks nobody where leave was taken back, and says so', async () => {
    const { reach, world, state } = await following(() => says(notice(6)));
    world.leave = false;
    await checkDue(reach);
    expect(world.asked).toEqual([]);
    expect((await state()).finding).toEqual({ state: 'failed', problem: 'no-leave' });
  });

  it.each([
    ['an earlier edition than was seen', notice(4), { state: 'older', edition: 4 }],
    [
      'another file under the number that is here',
      notice(5, { file: { sha256: 'b'.repeat(64), bytes: 9 } }),
      { state: 'other-text', edition: 5 },
    ],
    ['another pack', notice(6, { pack: 'other' }), { state: 'failed', problem: 'other-pack' }],
    ['no notice', '<html>', { state: 'failed', problem: 'no-notice' }],
  ])('tells %s', async (_what, text, finding) => {
    const { reach, state } = await following(() => says(text));
    await checkDue(reach);
    expect((await state()).finding).toEqual(finding);
  });

  it('tells that a newer edition may be held back, once the time of this one is over', async () => {
    const { reach, state } = await following(() => says(notice(5)), '2026-05-31');
    await checkDue(reach);
    expect((await state()).finding).toEqual({ state: 'overdue' });
  });
});
