import { type DraftPut, putDraft, readDrafts, revisionOf } from '../keep/drafts';
import type { Database } from '../keep/open';
import type { KeptDraft } from '../keep/schema';
import type { Kept } from '../keep/trouble';
import { sameDraft } from './drafts';
import { takingTurns } from './in-turn';

/** Does some work on the database. */
export type Keep = <T>(work: (db: Database) => Promise<Kept<T>>) => Promise<Kept<T>>;

/** A draft as it is kept now. */
export interface Written {
  draft: KeptDraft;
  /**
   * The draft from which it has parted just now, or null: another window had kept other words there that were not seen
   * here. Both are kept, and what is written here goes on under an id of its own.
   */
  partedFrom: string | null;
}

/** The pen of one window: it never writes over words that this window hasn't seen. */
export interface DraftWriter {
  /** Keeps a draft; one after the other. */
  write(draft: KeptDraft): Promise<Kept<Written>>;
  /**
   * Reads all drafts as they are kept, between two writes.
   * @param take shows them at once, and answers those that are shown as they are kept: all but the one in which
   *   something was typed that isn't kept yet
   */
  read(take: (kept: readonly KeptDraft[]) => readonly KeptDraft[]): Promise<Kept<void>>;
}

/** @param newId makes ids that nobody else has */
export function draftWriter(keep: Keep, newId: () => string): DraftWriter {
  const inTurn = takingTurns();
  /** By id: the revision that this window's words rest on. */
  const seen = new Map<string, number>();
  /** How many writes have been asked for so far. */
  let asked = 0;
  /**
   * Where drafts have parted from others, by the id that they had: the id under which they go on, and how many writes
   * had been asked for by then. Those still come under the old id; whoever asks later means the other's draft.
   */
  const parted = new Map<string, { to: string; asked: number }>();

  function idNow(id: string, turn: number): string {
    const way = parted.get(id);
    return way && turn <= way.asked ? idNow(way.to, turn) : id;
  }

  async function write(given: KeptDraft, turn: number): Promise<Kept<Written>> {
    const draft = { ...given, id: idNow(given.id, turn) };
    const done = await put(draft);
    if (!done.ok) return done;
    if (done.value.put) return { ok: true, value: { draft: done.value.put, partedFrom: null } };
    const { there } = done.value;
    if (sameDraft(there.draft, draft.draft)) {
      seen.set(there.id, revisionOf(there));
      return { ok: true, value: { draft: there, partedFrom: null } };
    }
    return part(draft);
  }

  async function part(draft: KeptDraft): Promise<Kept<Written>> {
    const own = { ...draft, id: newId(), partedFrom: draft.id };
    const done = await put(own);
    if (!done.ok) return done;
    parted.set(draft.id, { to: own.id, asked });
    return { ok: true, value: { draft: done.value.put ?? own, partedFrom: draft.id } };
  }

  async function put(draft: KeptDraft): Promise<Kept<DraftPut>> {
    const done = await keep((db) => putDraft(db, draft, seen.get(draft.id) ?? 0));
    if (done.ok && done.value.put) seen.set(draft.id, revisionOf(done.value.put));
    return done;
  }

  return {
    write(draft) {
      asked += 1;
      const turn = asked;
      return inTurn(() => write(draft, turn));
    },
    read: (take) =>
      inTurn(async () => {
        const done = await keep(readDrafts);
        if (!done.ok) return done;
        for (const draft of take(done.value)) seen.set(draft.id, revisionOf(draft));
        return { ok: true, value: undefined };
      }),
  };
}
