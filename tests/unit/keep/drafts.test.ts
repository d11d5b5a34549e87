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
    await putDraft(keep, draft('b', '2026-06-02T10:00:00.000Z'), 0);
    await putDraft(keep, draft('c', '2026-06-01T10:00:00.000Z'), 0);
    await putDraft(keep, draft('a', '2026-06-03T10:00:00.000Z'), 0);
    const read = await readDrafts(keep);
    expect(read.ok && read.value.map(({ id }) => id)).toEqual(['a', 'b', 'c']);
  });

  it('are replaced, deleted and put back by their id', async () => {
    const keep = await opened('drafts-change');
    const first = draft('a', '2026-06-01T10:00:00.000Z');
    await putDraft(keep, first, 0);
    await putDraft(keep, draft('a', '2026-06-02T10:00:00.000Z', 'renamed'), 1);
    const titles = async () => {
      const read = await readDrafts(keep);
      return read.ok && read.value.map((each) => each.draft.title);
    };
    expect(await titles()).toEqual(['renamed']);
    expect(await removeDraft(keep, 'a')).toMatchObject({ value: { draft: { title: 'renamed' }, revision: 2 } });
    expect(await removeDraft(keep, 'a')).toEqual({ ok: true, value: null });
    expect(await titles()).toEqual([]);
    await putDraft(keep, first, 2);
    expect(await titles()).toEqual(['a']);
  });

  it('are never replaced by whoever hasn’t seen them as they are', async () => {
    const keep = await opened('drafts-unseen');
    await putDraft(keep, draft('a', '2026-06-01T10:00:00.000Z'), 0);
    const late = await putDraft(keep, draft('a', '2026-06-02T10:00:00.000Z', 'late'), 0);
    expect(late).toMatchObject({ ok: true, value: { put: null, there: { draft: { title: 'a' }, revision: 1 } } });
    const read = await readDrafts(keep);
    expect(read.ok && read.value.map((each) => each.draft.title)).toEqual(['a']);
  });
});
