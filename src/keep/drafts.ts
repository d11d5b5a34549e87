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

/** Keeps a draft; the one with the same id is replaced. */
export function putDraft(db: Database, draft: KeptDraft): Promise<Kept<void>> {
  return change(db, ['drafts'], async (transaction) => {
    await transaction.objectStore('drafts').put(draft);
  });
}

export function removeDraft(db: Database, id: string): Promise<Kept<void>> {
  return change(db, ['drafts'], (transaction) => transaction.objectStore('drafts').delete(id));
}
