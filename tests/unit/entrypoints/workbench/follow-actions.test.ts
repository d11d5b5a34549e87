import 'fake-indexeddb/auto';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { followActions } from '../../../../entrypoints/workbench/follow-actions';
import { openKeep } from '../../../../src/keep/open';
import type { KeptSubscription } from '../../../../src/keep/schema';
import { readSubscriptions } from '../../../../src/keep/subscriptions';
import type { OfferStep } from '../../../../src/session/following/offer-told';
import { FOLLOWING_NOTHING, type FollowState } from '../../../../src/view/workbench/packs/state';

// What a browser asks its user no driver can press. Here the browser is a stand-in that answers as it is told, so that the
// way after a "no", after no answer at all and after a late "yes" is walked too.

const asked = vi.hoisted(() => ({
  answer: null as ((granted: boolean) => void) | null,
  granted: new Set<string>(),
  threads: [] as { address: string; tell: (step: OfferStep) => void; ended: boolean }[],
}));
vi.mock('wxt/browser', () => ({
  browser: {
    permissions: {
      request: ({ origins: [pattern = ''] }: { origins: string[] }) =>
        new Promise<boolean>((resolve) => {
          asked.answer = (granted) => {
            if (granted) asked.granted.add(pattern);
            resolve(granted);
          };
        }),
      contains: async ({ origins: [pattern = ''] }: { origins: string[] }) => asked.granted.has(pattern),
      remove: async ({ origins: [pattern = ''] }: { origins: string[] }) => asked.granted.delete(pattern),
    },
    alarms: { get: async () => undefined, create: async () => {}, clear: async () => true },
  },
}));
vi.mock('../../../../entrypoints/shared/follow-messages', () => ({ announce: () => {} }));
vi.mock('../../../../entrypoints/workbench/looking', () => ({
  lookInThread(address: string, _followed: string | null, tell: (step: OfferStep) => void) {
    const thread = { address, tell, ended: false };
    asked.threads.push(thread);
    return () => {
      thread.ended = true;
    };
  },
}));

const fetched = vi.fn(() => Promise.reject(new Error('nothing is fetched here')));
beforeEach(() => {
  vi.stubGlobal('indexedDB', new IDBFactory());
  vi.stubGlobal('navigator', { locks: { request: (_name: string, work: () => unknown) => work() } });
  vi.stubGlobal('fetch', fetched);
  asked.granted.clear();
  asked.threads.length = 0;
  fetched.mockClear();
});
afterEach(() => void vi.unstubAllGlobals());

const ADDRESS = 'https://packs.example/club.notice.json';
const PATTERN = 'https://packs.example/*';
const SUBSCRIPTION: KeptSubscription = {
  ...{ id: 'club', address: ADDRESS, since: '', triedAt: null, checkedAt: null, due: 0, failures: 0, left: null },
  ...{ finding: { state: 'never' }, file: { edition: 1, sha256: '' } },
};

async function opened(followed: readonly KeptSubscription[] = []) {
  const keep = await openKeep();
  if (!keep.ok) throw new Error(keep.trouble);
  for (const each of followed) await keep.value.put('subscriptions', each);
  let state: FollowState = FOLLOWING_NOTHING;
  const { actions, read } = followActions(
    { packs: { changed: async () => {} } as never },
    () => state,
    (change) => {
      state = { ...state, ...change };
    },
    (id) => id,
  );
  await read();
  const kept = async () => {
    const all = await readSubscriptions(keep.value);
    return all.ok ? all.value : [];
  };
  return { actions, state: () => state, kept };
}

const step = (state: () => FollowState) => state().looking?.step.state ?? null;
const NO = { state: 'not-begun', problem: 'no-leave' };

describe('where the user says no', () => {
  it('nothing is fetched or kept of an address that was typed, and it is said why', async () => {
    const { actions, state, kept } = await opened();
    actions.look(ADDRESS);
    expect(step(state)).toBe('asking');
    asked.answer?.(false);
    await vi.waitFor(() => expect(state().looking?.step).toEqual(NO));
    expect([asked.threads, await kept(), fetched.mock.calls]).toEqual([[], [], []]);
    actions.look(ADDRESS);
    asked.answer?.(true);
    await vi.waitFor(() => expect(asked.threads).toHaveLength(1));
  });

  it('a check of what is followed fetches nothing, says so, and the pack stays followed', async () => {
    const { actions, state, kept } = await opened([SUBSCRIPTION]);
    actions.check('club');
    asked.answer?.(false);
    await vi.waitFor(() => expect(state().checking).toBe('club'));
    await vi.waitFor(() => expect(state().checking).toBeNull());
    expect(fetched).not.toHaveBeenCalled();
    expect([...state().noLeave]).toEqual(['club']);
    expect(await kept()).toMatchObject([{ id: 'club', finding: { state: 'failed', problem: 'no-leave' } }]);
  });

  it('looking at a newer edition doesn’t begin, and what was found of it stays', async () => {
    const newer = { ...SUBSCRIPTION, finding: { state: 'newer', edition: 2 } } as const;
    const { actions, state, kept } = await opened([newer]);
    actions.see('club');
    asked.answer?.(false);
    await vi.waitFor(() => expect(state().looking).toEqual({ pack: 'club', step: NO }));
    expect([asked.threads, await kept()]).toEqual([[], [newer]]);
  });
});

describe('leave that leads to nothing is given back', () => {
  it('a yes that comes after all was cancelled', async () => {
    const { actions, state } = await opened();
    actions.look(ADDRESS);
    actions.cancel();
    asked.answer?.(true);
    await vi.waitFor(() => expect(asked.granted.size).toBe(0));
    expect([asked.threads, state().looking]).toEqual([[], null]);
  });

  it('where fetching is cancelled, and where another address is looked at instead', async () => {
    const { actions } = await opened();
    actions.look(ADDRESS);
    asked.answer?.(true);
    await vi.waitFor(() => expect(asked.threads).toHaveLength(1));
    actions.cancel();
    await vi.waitFor(() => expect(asked.granted.size).toBe(0));
    expect(asked.threads[0]?.ended).toBe(true);

    actions.look(ADDRESS);
    asked.answer?.(true);
    await vi.waitFor(() => expect(asked.threads).toHaveLength(2));
    actions.look('https://other.example/a.notice.json');
    asked.answer?.(true);
    await vi.waitFor(() => expect([...asked.granted]).toEqual(['https://other.example/*']));
  });

  it('not where the same host is looked at anew, or is followed', async () => {
    const { actions, state } = await opened();
    actions.look(ADDRESS);
    const first = asked.answer;
    actions.look(ADDRESS);
    asked.answer?.(true);
    first?.(true);
    await vi.waitFor(() => expect(asked.threads).toHaveLength(1));
    asked.threads[0]?.tell({ state: 'checking' });
    expect([step(state), ...asked.granted]).toEqual(['checking', PATTERN]);

    const following = await opened([SUBSCRIPTION]);
    asked.granted.add(PATTERN);
    following.actions.see('club');
    asked.answer?.(true);
    await vi.waitFor(() => expect(asked.threads).toHaveLength(2));
    following.actions.cancel();
    await vi.waitFor(() => expect(following.state().looking).toBeNull());
    await new Promise((done) => setTimeout(done, 20));
    expect([...asked.granted]).toEqual([PATTERN]);
  });
});
