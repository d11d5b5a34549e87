import 'fake-indexeddb/auto';
import { afterEach, describe, expect, it } from 'vitest';
import { putDraft, readDrafts, removeDraft } from '../../../src/keep/drafts';
import { type Database, openKeep } from '../../../src/keep/open';

let db: Database | undefined;
afterEach(() => db?.close());

async function opened(name: string): Promise<Database> {
  const keep = await openKeep(name);
  if (!keep.ok) throw new Error(keep.trouble);
  db = keep.value;
  return db;
}
const draft = (id: string, changedAt: string, title = id) => ({ id, draft: { title }, changedAt });

describe('drafts that this browser keeps', () => {
  it('are listed with the one that was changed last first', async () => {
    const keep = await opened('drafts-order');
    await putDraft(keep, draft('b', '2026-06-02T10:00:00.000Z'));
    await putDraft(keep, draft('c', '2026-06-01T10:00:00.000Z'));
    await putDraft(keep, draft('a', '2026-06-03T10:00:00.000Z'));
    const read = await readDrafts(keep);
    expect(read.ok && read.value.map(({ id }) => id)).toEqual(['a', 'b', 'c']);
  });

  it('are replaced, deleted and put back by their id', async () => {
    const keep = await opened('drafts-change');
    const first = draft('a', '2026-06-01T10:00:00.000Z');
    await putDraft(keep, first);
    await putDraft(keep, draft('a', '2026-06-02T10:00:00.000Z', 'renamed'));
    const titles = async () => {
      const read = await readDrafts(keep);
      return read.ok && read.value.map((each) => each.draft.title);
    };
    expect(await titles()).toEqual(['renamed']);
    await removeDraft(keep, 'a');
    expect(await titles()).toEqual([]);
    await putDraft(keep, first);
    expect(await titles()).toEqual(['a']);
  });
});
