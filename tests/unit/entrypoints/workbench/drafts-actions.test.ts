import 'fake-indexeddb/auto';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import type { BenchEngine } from '../../../../entrypoints/workbench/bench-engine';
import { type DraftsDesk, draftsActions } from '../../../../entrypoints/workbench/drafts-actions';
import { NOTHING_SEEN } from '../../../../src/session/seen';
import type { DraftsState } from '../../../../src/view/workbench/DraftsRoom';

vi.mock('../../../../entrypoints/shared/follow-messages', () => ({ announce: () => {} }));
vi.mock('../../../../entrypoints/shared/seen-store', () => ({
  seenStore: () => ({ read: async () => new Map(), put: async () => true, remove: async () => true }),
}));

beforeEach(() => {
  vi.stubGlobal('indexedDB', new IDBFactory());
  vi.stubGlobal('addEventListener', () => {});
  vi.stubGlobal('document', { getElementById: () => null });
});
afterEach(() => void vi.unstubAllGlobals());

const engine = { ask: async () => ({ ok: false, trouble: 'broken' }) } as unknown as BenchEngine;

async function openWindow(): Promise<DraftsDesk & { state: () => DraftsState; titles: () => (string | undefined)[] }> {
  let state: DraftsState = {
    ...{ drafts: null, chosen: null, sitting: 0, seen: NOTHING_SEEN, answered: null, kept: 'blank', copied: 'none' },
    ...{ removed: null, parted: null, trouble: null, isPrivate: false },
  };
  const desk = draftsActions(
    engine,
    () => state,
    (change) => {
      state = { ...state, ...change };
    },
  );
  await desk.start();
  return { ...desk, state: () => state, titles: () => state.drafts?.map(({ draft }) => draft.title) ?? [] };
}

it('removes the words that are shown here, where another window has kept others meanwhile', async () => {
  const one = await openWindow();
  one.actions.create();
  one.actions.write('title', 'Old');
  await one.flush();
  const other = await openWindow();
  const [id] = other.state().drafts!.map((draft) => draft.id);
  await other.actions.choose(id!);
  one.actions.write('title', 'Old machine');
  await one.flush();

  other.actions.write('title', 'Old, heavy');
  await other.actions.remove(id!);
  await other.follow();
  expect(other.titles()).toEqual(['Old machine']);
  expect(other.state().removed?.draft.title).toBe('Old, heavy');
  expect(other.state().chosen).toBeNull();
  await other.actions.undoRemove();
  expect(other.titles()).toEqual(['Old, heavy', 'Old machine']);

  // The other's draft, under the id that this window's words once had, is removed where it is meant.
  await other.actions.remove(id!);
  expect(other.titles()).toEqual(['Old, heavy']);
});
