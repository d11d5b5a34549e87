import { putDraft, readDrafts, removeDraft } from '../../src/keep/drafts';
import type { KeptDraft } from '../../src/keep/schema';
import { draftsFollowed, draftText, isBlank } from '../../src/session/drafts';
import { NOTHING_SEEN, type Seen, withoutSeen, withSeen } from '../../src/session/seen';
import type { DraftsActions, DraftsState } from '../../src/view/workbench/DraftsRoom';
import { copyText } from '../shared/copy-text';
import { announce } from '../shared/follow-messages';
import { withKeep } from '../shared/keep';
import { seenStore } from '../shared/seen-store';
import { today } from '../shared/today';
import type { BenchEngine } from './bench-engine';

/** Milliseconds without a keystroke after which a draft is audited and kept. */
const PAUSE = 300;

/**
 * What can be done with drafts. Every word that is typed stands in the room's state at once; a pause later it is kept
 * and held against the packs.
 */
export function draftsActions(
  engine: BenchEngine,
  state: () => DraftsState,
  show: (change: Partial<DraftsState>) => void,
): { actions: DraftsActions; start: () => void; packsChanged: () => void; follow: () => void } {
  let pause: ReturnType<typeof setTimeout> | undefined;
  /** The draft whose last words are not kept yet. */
  let unkept: KeptDraft | null = null;
  const store = seenStore(state().isPrivate);
  /** What had been seen of the draft that was removed last. */
  let removedSeen: Seen = NOTHING_SEEN;

  const chosen = () => state().drafts?.find(({ id }) => id === state().chosen);

  async function keep(): Promise<void> {
    const draft = unkept;
    unkept = null;
    if (!draft) return;
    if (state().isPrivate) return show({ kept: 'not' });
    const done = await withKeep((db) => putDraft(db, draft));
    if (!done.ok) return show({ trouble: done.trouble, kept: 'not' });
    tellOthers();
    if (unkept === null && state().chosen === draft.id) show({ kept: 'kept', trouble: null });
  }

  /** Other windows show it too; of a private window nobody hears. */
  function tellOthers(): void {
    if (!state().isPrivate) announce({ type: 'drafts-changed' });
  }

  async function audit(): Promise<void> {
    const asked = chosen();
    if (!asked || isBlank(asked.draft)) return show({ answered: null });
    const { seen } = state();
    const reply = await engine.ask({ about: 'draft', draft: asked.draft, asOf: today(), seen });
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

  /** What was typed so far is kept now, whatever else happens. */
  function flush(): void {
    clearTimeout(pause);
    void keep();
  }

  const actions: DraftsActions = {
    create() {
      flush();
      const draft: KeptDraft = { id: crypto.randomUUID(), draft: {}, changedAt: new Date().toISOString() };
      show({
        drafts: [draft, ...(state().drafts ?? [])],
        ...{ chosen: draft.id, seen: NOTHING_SEEN, answered: null, kept: 'blank', copied: 'none', removed: null },
      });
      document.getElementById('draft-title')?.focus();
    },
    async choose(id) {
      flush();
      show({ chosen: id, seen: NOTHING_SEEN, answered: null, kept: 'kept', copied: 'none' });
      const seen = await store.read(id);
      if (state().chosen !== id) return;
      show({ seen });
      void audit();
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
      const draft = { ...before.draft, [field]: value };
      unkept = { ...before, draft, changedAt: new Date().toISOString() };
      const drafts = state().drafts?.map((each) => (each.id === before.id && unkept ? unkept : each)) ?? [];
      show({ drafts, kept: 'waiting', copied: 'none' });
      clearTimeout(pause);
      pause = setTimeout(() => {
        void keep();
        void audit();
      }, PAUSE);
    },
    async copy() {
      const draft = chosen();
      if (draft) show({ copied: (await copyText(draftText(draft.draft))) ? 'copied' : 'refused' });
    },
    async remove(id) {
      flush();
      const removed = state().drafts?.find((draft) => draft.id === id);
      const done = state().isPrivate ? { ok: true as const } : await withKeep((db) => removeDraft(db, id));
      if (!done.ok) return show({ trouble: done.trouble });
      removedSeen = await store.read(id);
      for (const attribute of removedSeen.keys()) void store.remove(id, attribute);
      tellOthers();
      const drafts = state().drafts?.filter((draft) => draft.id !== id) ?? [];
      const next = state().chosen === id ? { chosen: null, answered: null } : {};
      show({ drafts, removed: removed && !isBlank(removed.draft) ? removed : null, ...next });
    },
    async undoRemove() {
      const back = state().removed;
      if (!back) return;
      const done = state().isPrivate ? { ok: true as const } : await withKeep((db) => putDraft(db, back));
      if (!done.ok) return show({ trouble: done.trouble });
      for (const [attribute, value] of removedSeen) void store.put(back.id, attribute, value);
      tellOthers();
      show({ drafts: [back, ...(state().drafts ?? [])], removed: null });
    },
  };

  // A tab that is closed or put away a moment after the last word.
  addEventListener('visibilitychange', () => document.visibilityState === 'hidden' && flush());

  return {
    actions,
    packsChanged: () => void audit(),
    /** Another window has changed drafts: they are shown as they are by now, save the one that is being typed here. */
    async follow() {
      const read = state().isPrivate ? null : await withKeep(readDrafts);
      if (!read?.ok) return;
      const { drafts, chosen: id } = state();
      const now = draftsFollowed(drafts ?? [], read.value, unkept);
      const isThere = now.some((draft) => draft.id === id);
      const seen = isThere && id !== null ? await store.read(id) : NOTHING_SEEN;
      if (state().chosen !== id) return;
      show({ drafts: now, seen, ...(isThere ? {} : { chosen: null, answered: null }) });
      void audit();
    },
    async start() {
      if (state().isPrivate) return show({ drafts: state().drafts ?? [] });
      const read = await withKeep(readDrafts);
      if (read.ok) show({ drafts: [...(state().drafts ?? []), ...read.value] });
      else show({ drafts: state().drafts ?? [], trouble: read.trouble });
    },
  };
}
