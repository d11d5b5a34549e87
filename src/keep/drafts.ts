import { change, look } from './change';
import type { Database } from './open';
import type { KeptDraft } from './schema';
import type { Kept } from './trouble';

/** All drafts, the one that was changed last first. */
export function readDrafts(db: Database): Promise<Kept<KeptDraft[]>> {
  return look(db, ['drafts'], async (transaction) => {
    const drafts = await transaction.objectStore('drafts').index('changedAt').getAll();
    return drafts.reverse();
  });
}

/** What came of putting a draft: it is kept as it says now; or another one was kept meanwhile, and nothing was changed. */
export type DraftPut = { put: KeptDraft } | { put: null; there: KeptDraft };

/**
 * Keeps a draft in place of the revision that its writer has seen, never in place of one that was not seen. One that
 * was removed meanwhile is kept anew.
 * @param seen the revision that was seen; 0 for a draft that was never kept
 */
export function putDraft(db: Database, draft: KeptDraft, seen: number): Promise<Kept<DraftPut>> {
  return change(db, ['drafts'], async (transaction): Promise<DraftPut> => {
    const drafts = transaction.objectStore('drafts');
    const there = await drafts.get(draft.id);
    if (there && revisionOf(there) !== seen) return { put: null, there };
    const put = { ...draft, revision: seen + 1 };
    await drafts.put(put);
    return { put };
  });
}

export function revisionOf({ revision = 0 }: KeptDraft): number {
  return revision;
}

/** @returns what was removed, as it was kept last, or null where there was none */
export function removeDraft(db: Database, id: string): Promise<Kept<KeptDraft | null>> {
  return change(db, ['drafts'], async (transaction) => {
    const drafts = transaction.objectStore('drafts');
    const there = await drafts.get(id);
    await drafts.delete(id);
    return there ?? null;
  });
}
