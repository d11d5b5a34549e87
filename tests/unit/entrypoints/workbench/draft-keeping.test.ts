import 'fake-indexeddb/auto';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { type DraftKeeping, draftKeeping } from '../../../../entrypoints/workbench/draft-keeping';
import { readDrafts } from '../../../../src/keep/drafts';
import { openKeep } from '../../../../src/keep/open';
import type { KeptDraft } from '../../../../src/keep/schema';
import { NOTHING_SEEN } from '../../../../src/session/seen';
import type { DraftsState } from '../../../../src/view/workbench/DraftsRoom';

// Two windows in one browser: each announces to the others that drafts have changed, and they read them anew.

const windows = new Set<DraftKeeping>();
vi.mock('../../../../entrypoints/shared/follow-messages', () => ({
  announce: () => {
    for (const each of windows) void each.read();
  },
}));

interface OpenWindow {
  keeping: DraftKeeping;
  state: () => DraftsState;
  /** What stands in the draft that is written here. */
  title: () => string | undefined;
  choose: (id: string) => void;
  write: (title: string) => void;
}

function openWindow(): OpenWindow {
  let state: DraftsState = {
    ...{ drafts: null, chosen: null, sitting: 0, seen: NOTHING_SEEN, answered: null, kept: 'blank', copied: 'none' },
    ...{ removed: null, parted: null, trouble: null, isPrivate: false },
  };
  const show = (change: Partial<DraftsState>) => {
    state = { ...state, ...change };
  };
  const keeping = draftKeeping(
    () => state,
    show,
    () => {},
    () => {},
  );
  windows.add(keeping);
  const own = () => state.drafts?.find(({ id }) => id === state.chosen);
  return {
    keeping,
    state: () => state,
    title: () => own()?.draft.title,
    choose: (chosen) => show({ chosen }),
    write(title) {
      const draft: KeptDraft = { ...draftOf(title), id: state.chosen ?? 'a' };
      const isThere = state.drafts?.some(({ id }) => id === draft.id);
      const drafts = state.drafts?.map((each) => (each.id === draft.id ? draft : each)) ?? [];
      show({ drafts: isThere ? drafts : [draft, ...drafts], chosen: draft.id, kept: 'waiting' });
      keeping.typed(draft);
    },
  };
}

const draftOf = (title: string): KeptDraft => ({ id: 'a', draft: { title }, changedAt: '2026-06-01T10:00:00.000Z' });

async function keptTitles(): Promise<(string | undefined)[]> {
  const keep = await openKeep();
  if (!keep.ok) throw new Error(keep.trouble);
  const drafts = await readDrafts(keep.value);
  keep.value.close();
  if (!drafts.ok) throw new Error(drafts.trouble);
  return drafts.value.map(({ draft }) => draft.title).sort();
}

beforeEach(() => {
  vi.stubGlobal('indexedDB', new IDBFactory());
  windows.clear();
});

afterEach(() => void vi.unstubAllGlobals());

async function twoWindows(): Promise<[OpenWindow, OpenWindow]> {
  const [one, other] = [openWindow(), openWindow()];
  await one.keeping.read(true);
  one.write('Old');
  await one.keeping.flush();
  await other.keeping.read();
  other.choose('a');
  expect(other.title()).toBe('Old');
  return [one, other];
}

it('is done with what is written once all of it is kept, also what was under way before', async () => {
  const [one] = await twoWindows();
  one.write('Old machine');
  void one.keeping.flush();
  await one.keeping.flush();
  expect(one.state().kept).toBe('kept');
  expect(await keptTitles()).toEqual(['Old machine']);
});

it('keeps the words of both windows, however many are under way where they part', async () => {
  const [one, other] = await twoWindows();
  other.write('Old, h');
  one.write('Old machine');
  await one.keeping.flush();
  // Kept slowly: a message of the other window comes in, and more is written, before the first of it is kept.
  const first = other.keeping.flush();
  void other.keeping.read();
  other.write('Old, heavy');
  await Promise.all([first, other.keeping.flush()]);
  await other.keeping.flush();
  expect(await keptTitles()).toEqual(['Old machine', 'Old, heavy']);
  await Promise.all([one, other].map(({ keeping }) => keeping.read()));
  expect([one.title(), other.title()]).toEqual(['Old machine', 'Old, heavy']);
  expect([one.state().parted, other.state().parted]).toEqual([null, 'Old, h']);
});
