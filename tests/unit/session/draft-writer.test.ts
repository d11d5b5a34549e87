import 'fake-indexeddb/auto';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { putDraft, readDrafts, removeDraft } from '../../../src/keep/drafts';
import { type Database, openKeep } from '../../../src/keep/open';
import type { KeptDraft } from '../../../src/keep/schema';
import { type DraftWriter, draftWriter, type Keep } from '../../../src/session/draft-writer';

let db: Database;
let one: DraftWriter;
let other: DraftWriter;
let count = 0;
const keep: Keep = (work) => work(db);
beforeEach(async () => {
  count += 1;
  const opened = await openKeep(`draft-writer-${count}`);
  if (!opened.ok) throw new Error(opened.trouble);
  db = opened.value;
  let ids = 0;
  const newId = () => `parted-${++ids}`;
  one = draftWriter(keep, newId);
  other = draftWriter(keep, newId);
});
afterEach(() => db.close());

const draft = (title: string, id = 'a'): KeptDraft => ({ id, draft: { title }, changedAt: '2026-06-01T10:00:00.000Z' });
async function kept(): Promise<Record<string, string | undefined>> {
  const read = await readDrafts(db);
  if (!read.ok) throw new Error(read.trouble);
  return Object.fromEntries(read.value.map((each) => [each.id, each.draft.title]));
}
async function follow(writer: DraftWriter, typed: string | null = null): Promise<void> {
  await writer.read((all) => all.filter(({ id }) => id !== typed));
}
async function written(writer: DraftWriter, given: KeptDraft) {
  const done = await writer.write(given);
  if (!done.ok) throw new Error(done.trouble);
  return done.value;
}

describe('one window’s pen', () => {
  it('keeps word after word in the same draft, also where it is asked before the last one is kept', async () => {
    const all = ['O', 'Ol', 'Old'].map((title) => one.write(draft(title)));
    for (const each of await Promise.all(all)) expect(each).toMatchObject({ ok: true, value: { partedFrom: null } });
    expect(await kept()).toEqual({ a: 'Old' });
  });

  it('goes on where another window left off, once that was seen', async () => {
    await written(one, draft('Old'));
    await follow(other);
    expect(await written(other, draft('Old machine'))).toMatchObject({ partedFrom: null });
    await follow(one);
    await written(one, draft('Old machine, heavy'));
    expect(await kept()).toEqual({ a: 'Old machine, heavy' });
  });

  it('never writes over words that were not seen here: both are kept, and each window goes on in its own', async () => {
    await written(one, draft('Old'));
    await follow(other);
    await written(one, draft('Old machine'));
    expect(await written(other, draft('Old, heavy'))).toMatchObject({
      partedFrom: 'a',
      draft: { id: 'parted-1', partedFrom: 'a', draft: { title: 'Old, heavy' } },
    });
    expect(await kept()).toEqual({ a: 'Old machine', 'parted-1': 'Old, heavy' });
    await written(one, draft('Old machine, runs'));
    await written(other, draft('Old, heavy, runs', 'parted-1'));
    expect(await kept()).toEqual({ a: 'Old machine, runs', 'parted-1': 'Old, heavy, runs' });
  });

  it('parts once, though more was typed under the old id before that was told', async () => {
    await written(one, draft('Old'));
    await follow(other);
    await written(one, draft('Old machine'));
    await Promise.all([other.write(draft('Old, h')), other.write(draft('Old, he')), other.write(draft('Old, heavy'))]);
    expect(await kept()).toEqual({ a: 'Old machine', 'parted-1': 'Old, heavy' });
    // The other window's draft can be chosen and written in here as well.
    await follow(other);
    await written(other, draft('Old machine, too'));
    expect(await kept()).toEqual({ a: 'Old machine, too', 'parted-1': 'Old, heavy' });
  });

  it('writes not over the other’s words where all drafts are read between two writes that were asked for before it parted', async () => {
    await written(one, draft('Old'));
    await follow(other);
    await written(one, draft('Old machine'));
    // Parted by then, the window takes what stands under the old id for the other’s draft, and it has seen it.
    await Promise.all([other.write(draft('Old, h')), follow(other, 'parted-1'), other.write(draft('Old, heavy'))]);
    expect(await kept()).toEqual({ a: 'Old machine', 'parted-1': 'Old, heavy' });
    await written(one, draft('Old machine, runs'));
    expect(await kept()).toEqual({ a: 'Old machine, runs', 'parted-1': 'Old, heavy' });
  });

  it('doesn’t take what is being typed here for seen', async () => {
    await written(one, draft('Old'));
    await follow(other);
    await written(one, draft('Old machine'));
    await follow(other, 'a');
    expect(await written(other, draft('Old, heavy'))).toMatchObject({ partedFrom: 'a' });
  });

  it('reads between its own writes, so that it never takes its own words for another’s', async () => {
    await Promise.all([
      one.write(draft('O')),
      follow(one),
      one.write(draft('Ol')),
      follow(one),
      one.write(draft('Old')),
    ]);
    expect(await kept()).toEqual({ a: 'Old' });
  });

  it('doesn’t part from the very same words', async () => {
    await written(one, draft('Old'));
    await follow(other);
    await written(one, draft('Old machine'));
    expect(await written(other, draft('Old machine'))).toMatchObject({ partedFrom: null, draft: { id: 'a' } });
    await written(other, draft('Old machine, heavy'));
    expect(await kept()).toEqual({ a: 'Old machine, heavy' });
  });

  it('keeps anew what another window has removed meanwhile', async () => {
    await written(one, draft('Old'));
    await follow(other);
    await removeDraft(db, 'a');
    await written(other, draft('Old, heavy'));
    expect(await kept()).toEqual({ a: 'Old, heavy' });
  });

  it('reads drafts that were kept before revisions were counted', async () => {
    await db.put('drafts', draft('From before'));
    await follow(one);
    expect(await written(one, draft('From before, changed'))).toMatchObject({ draft: { revision: 1 } });
    expect(await putDraft(db, draft('Unseen'), 0)).toMatchObject({ value: { put: null, there: { revision: 1 } } });
  });

  it('tells a trouble, and keeps the same words when it is asked again', async () => {
    let full = true;
    const sometimes = draftWriter(
      async (work) => (full ? { ok: false, trouble: 'full' } : work(db)),
      () => 'none',
    );
    expect(await sometimes.write(draft('Old'))).toEqual({ ok: false, trouble: 'full' });
    full = false;
    expect(await sometimes.write(draft('Old'))).toMatchObject({ ok: true, value: { partedFrom: null } });
    expect(await kept()).toEqual({ a: 'Old' });
  });
});
