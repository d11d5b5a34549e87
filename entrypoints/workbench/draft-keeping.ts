import type { KeptDraft } from '../../src/keep/schema';
import { draftWriter } from '../../src/session/draft-writer';
import { draftName, draftsFollowed } from '../../src/session/drafts';
import type { DraftsState } from '../../src/view/workbench/DraftsRoom';
import { announce } from '../shared/follow-messages';
import { withKeep } from '../shared/keep';

/** Milliseconds without a keystroke after which a draft is kept. */
const PAUSE = 300;

/** How the drafts of one window get into this browser's storage and, from other windows, out of it. */
export interface DraftKeeping {
  /** More was typed: it is kept a pause later. */
  typed(draft: KeptDraft): void;
  /** What was typed so far is kept now, whatever else happens; done once all of it is, also what was under way before. */
  flush(): Promise<void>;
  /** Puts back what was removed. Answers whether that was done. */
  putBack(draft: KeptDraft): Promise<boolean>;
  /**
   * Shows the drafts as they are kept by now, save the one that is being typed here.
   * @param begin for the first time: what is shown already is this window's own
   */
  read(begin?: boolean): Promise<void>;
}

/**
 * @param paused told a pause after the last keystroke
 * @param parted told that the draft that is being written here goes on under another id
 */
export function draftKeeping(
  state: () => DraftsState,
  show: (change: Partial<DraftsState>) => void,
  paused: () => void,
  parted: (from: string, to: string) => void,
): DraftKeeping {
  const writer = draftWriter(withKeep, () => crypto.randomUUID());
  let pause: ReturnType<typeof setTimeout> | undefined;
  /** Drafts whose last words are not kept yet, by id; those that are under way into storage among them. */
  const unkept = new Map<string, KeptDraft>();
  const underWay = new Map<KeptDraft, Promise<void>>();

  async function keep(): Promise<void> {
    await Promise.all([...unkept.values()].map((draft) => underWay.get(draft) ?? keepOne(draft)));
  }

  function keepOne(draft: KeptDraft): Promise<void> {
    const work = write(draft).finally(() => underWay.delete(draft));
    underWay.set(draft, work);
    return work;
  }

  async function write(draft: KeptDraft): Promise<void> {
    if (state().isPrivate) {
      unkept.delete(draft.id);
      return show({ kept: 'not' });
    }
    const done = await writer.write(draft);
    // It stays among the unkept, and is tried again with whatever is done next.
    if (!done.ok) return show({ trouble: done.trouble, kept: 'not' });
    // Unless more was typed meanwhile, which is kept by itself.
    if (unkept.get(draft.id) === draft) unkept.delete(draft.id);
    const { draft: kept, partedFrom } = done.value;
    if (partedFrom !== null) part(partedFrom, kept);
    announce({ type: 'drafts-changed' });
    if (!unkept.has(kept.id) && state().chosen === kept.id) show({ kept: 'kept', trouble: null });
    if (partedFrom === null) return;
    // More was typed meanwhile, and perhaps is under way under the old id: shown and kept under the new one.
    void keep();
    await read();
  }

  /** Another window has kept other words: what is written here goes on as a draft of its own. */
  function part(from: string, own: KeptDraft): void {
    const { drafts, chosen } = state();
    const renamed = (draft: KeptDraft) => ({ ...draft, id: own.id, partedFrom: from });
    const typed = unkept.get(from);
    if (typed) unkept.set(own.id, renamed(typed));
    unkept.delete(from);
    show({
      drafts: drafts?.map((draft) => (draft.id === from ? renamed(draft) : draft)) ?? null,
      chosen: chosen === from ? own.id : chosen,
      parted: draftName(own.draft),
    });
    parted(from, own.id);
  }

  async function read(begin = false): Promise<void> {
    if (state().isPrivate) return begin ? show({ drafts: state().drafts ?? [] }) : undefined;
    const done = await writer.read((kept) => {
      const { drafts, chosen } = state();
      const now = draftsFollowed(drafts ?? [], kept, unkept);
      const isThere = chosen === null || now.some(({ id }) => id === chosen);
      show({ drafts: now, ...(isThere ? {} : { chosen: null, answered: null }) });
      return kept.filter(({ id }) => !unkept.has(id));
    });
    if (!done.ok) show({ drafts: state().drafts ?? [], ...(begin ? { trouble: done.trouble } : {}) });
  }

  function flush(): Promise<void> {
    clearTimeout(pause);
    return keep();
  }

  return {
    typed(draft) {
      unkept.set(draft.id, draft);
      clearTimeout(pause);
      pause = setTimeout(() => {
        void keep();
        paused();
      }, PAUSE);
    },
    flush,
    async putBack(draft) {
      if (state().isPrivate) return true;
      const done = await writer.write(draft);
      if (!done.ok) show({ trouble: done.trouble });
      else announce({ type: 'drafts-changed' });
      return done.ok;
    },
    read,
  };
}
