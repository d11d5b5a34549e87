import { removeDraft } from '../../src/keep/drafts';
import type { KeptDraft } from '../../src/keep/schema';
import type { Draft } from '../../src/listing/types';
import { draftText, isBlank } from '../../src/session/drafts';
import { NOTHING_SEEN, type Seen, withoutSeen, withSeen } from '../../src/session/seen';
import { DraftAnswered } from '../../src/view/workbench/DraftAudit';
import type { DraftsActions, DraftsState } from '../../src/view/workbench/DraftsRoom';
import { copyText } from '../shared/copy-text';
import { announce } from '../shared/follow-messages';
import { withKeep } from '../shared/keep';
import { seenStore } from '../shared/seen-store';
import { today } from '../shared/today';
import type { BenchEngine } from './bench-engine';
import { draftKeeping } from './draft-keeping';

export interface DraftsDesk {
  actions: DraftsActions;
  start(): Promise<void>;
  /** A draft that begins with what another room has found, and what was seen of that machine. */
  begin(draft: Draft, seen: Seen): void;
  packsChanged(): void;
  /** Another window has changed drafts. */
  follow(): Promise<void>;
  flush(): Promise<void>;
}

/**
 * What can be done with drafts. Every word that is typed stands in the room's state at once; a pause later it is kept
 * and held against the packs.
 */
export function draftsActions(
  engine: BenchEngine,
  state: () => DraftsState,
  show: (change: Partial<DraftsState>) => void,
): DraftsDesk {
  const store = seenStore(state().isPrivate);
  const keeping = draftKeeping(state, show, () => void audit(), goesOnAs);
  /** By the id that they had before: the drafts that have parted from another window's. */
  const parted = new Map<string, string>();
  /** What had been seen of the draft that was removed last. */
  let removedSeen: Seen = NOTHING_SEEN;

  const chosen = () => state().drafts?.find(({ id }) => id === state().chosen);

  /** Other windows show it too; of a private window nobody hears. */
  function tellOthers(): void {
    if (!state().isPrivate) announce({ type: 'drafts-changed' });
  }

  async function audit(): Promise<void> {
    const asked = chosen();
    if (!asked || isBlank(asked.draft)) return show({ answered: null });
    const { seen } = state();
    // What the answer is shown with is fetched with the first one, so that nothing moves under anybody's hands.
    const [reply] = await Promise.all([
      engine.ask({ about: 'draft', draft: asked.draft, asOf: today(), seen }),
      DraftAnswered.fetched(),
    ]);
    const now = chosen();
    // Another draft was chosen, or more was typed or seen and is audited by itself.
    if (now?.draft !== asked.draft || state().seen !== seen) return;
    if (reply.ok) show({ answered: { draft: asked.draft, seen, answer: reply.value } });
    else show({ trouble: reply.trouble });
  }

  function nowSeen(seen: Seen): void {
    show({ seen });
    void audit();
  }

  /** What was seen of the thing is true of it in either draft. */
  async function goesOnAs(from: string, to: string): Promise<void> {
    parted.set(from, to);
    for (const [attribute, value] of await store.read(from)) void store.put(to, attribute, value);
  }

  /** Puts a new draft in front. */
  function open(draft: Draft): KeptDraft {
    void keeping.flush();
    const fresh: KeptDraft = { id: crypto.randomUUID(), draft, changedAt: new Date().toISOString() };
    show({
      drafts: [fresh, ...(state().drafts ?? [])],
      ...{ chosen: fresh.id, sitting: state().sitting + 1, seen: NOTHING_SEEN, answered: null },
      ...{ kept: 'blank', copied: 'none', removed: null, parted: null },
    });
    return fresh;
  }

  const actions: DraftsActions = {
    create() {
      open({});
      document.getElementById('draft-title')?.focus();
    },
    async choose(id) {
      void keeping.flush();
      show({ chosen: id, sitting: state().sitting + 1, seen: NOTHING_SEEN, answered: null });
      show({ kept: 'kept', copied: 'none', parted: null });
      const seen = await store.read(id);
      if (state().chosen !== id) return;
      nowSeen(seen);
    },
    saw(attribute, value) {
      const { chosen: id, seen } = state();
      if (id === null) return;
      nowSeen(withSeen(seen, attribute, value));
      void store.put(id, attribute, value).then((kept) => kept && tellOthers());
    },
    takeBack(attribute) {
      const { chosen: id, seen } = state();
      if (id === null) return;
      nowSeen(withoutSeen(seen, attribute));
      void store.remove(id, attribute).then((kept) => kept && tellOthers());
    },
    write(field, value) {
      const before = chosen();
      if (!before) return;
      const draft = { ...before, draft: { ...before.draft, [field]: value }, changedAt: new Date().toISOString() };
      const drafts = state().drafts?.map((each) => (each.id === before.id ? draft : each)) ?? [];
      show({ drafts, kept: 'waiting', copied: 'none' });
      keeping.typed(draft);
    },
    async copy() {
      const draft = chosen();
      if (draft) show({ copied: (await copyText(draftText(draft.draft))) ? 'copied' : 'refused' });
    },
    async remove(asked) {
      parted.delete(asked);
      await keeping.flush();
      // What was shown when its button was pressed; another window's words may stand under that id by now.
      const id = parted.get(asked) ?? asked;
      const shown = state().drafts?.find((draft) => draft.id === id);
      const done = state().isPrivate ? { ok: true as const, value: null } : await withKeep((db) => removeDraft(db, id));
      if (!done.ok) return show({ trouble: done.trouble });
      removedSeen = await store.read(id);
      for (const attribute of removedSeen.keys()) void store.remove(id, attribute);
      tellOthers();
      // Another window may have kept more of it than is shown here.
      const removed = done.value ?? shown;
      const drafts = state().drafts?.filter((draft) => draft.id !== id) ?? [];
      const next = state().chosen === id ? { chosen: null, answered: null } : {};
      show({ drafts, removed: removed && !isBlank(removed.draft) ? removed : null, ...next });
    },
    async undoRemove() {
      const back = state().removed;
      if (!back || !(await keeping.putBack(back))) return;
      for (const [attribute, value] of removedSeen) void store.put(back.id, attribute, value);
      show({ drafts: [back, ...(state().drafts ?? [])], removed: null });
    },
  };

  // A tab that is closed or put away a moment after the last word.
  addEventListener('visibilitychange', () => document.visibilityState === 'hidden' && void keeping.flush());

  return {
    actions,
    packsChanged: () => void audit(),
    flush: keeping.flush,
    start: () => keeping.read(true),
    begin(draft, seen) {
      const fresh = open(draft);
      show({ kept: 'waiting' });
      keeping.typed(fresh);
      for (const [attribute, value] of seen) void store.put(fresh.id, attribute, value);
      nowSeen(seen);
    },
    async follow() {
      await keeping.read();
      const { chosen: id } = state();
      const seen = id === null ? NOTHING_SEEN : await store.read(id);
      if (state().chosen === id) nowSeen(seen);
    },
  };
}
