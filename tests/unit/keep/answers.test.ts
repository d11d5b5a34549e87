import 'fake-indexeddb/auto';
import { afterEach, describe, expect, it } from 'vitest';
import { putAnswer, readAnswers, removeAnswer } from '../../../src/keep/answers';
import { type Database, openKeep } from '../../../src/keep/open';

let db: Database | undefined;
afterEach(() => db?.close());

async function opened(name: string): Promise<Database> {
  const keep = await openKeep(name);
  if (!keep.ok) throw new Error(keep.trouble);
  db = keep.value;
  return db;
}
const answer = (about: string, attribute: string, value = '"long"') => ({
  ...{ about, attribute, answer: value, at: '2026-06-01T10:00:00.000Z' },
});

describe('answers that this browser keeps', () => {
  it('are found by what they are about, and by nothing else', async () => {
    const keep = await opened('answers-about');
    await putAnswer(keep, answer('https://a.example/1', 'p/bobbin'));
    await putAnswer(keep, answer('https://a.example/1', 'p/shank'));
    await putAnswer(keep, answer('https://a.example/10', 'p/bobbin'));
    const read = await readAnswers(keep, 'https://a.example/1');
    expect(read.ok && read.value.map(({ attribute }) => attribute).sort()).toEqual(['p/bobbin', 'p/shank']);
    expect(await readAnswers(keep, 'https://a.example/')).toEqual({ ok: true, value: [] });
  });

  it('are replaced by a later one about the same, and removed', async () => {
    const keep = await opened('answers-change');
    await putAnswer(keep, answer('x', 'p/bobbin'));
    await putAnswer(keep, answer('x', 'p/bobbin', 'null'));
    const values = async () => {
      const read = await readAnswers(keep, 'x');
      return read.ok && read.value.map((each) => each.answer);
    };
    expect(await values()).toEqual(['null']);
    await removeAnswer(keep, 'x', 'p/bobbin');
    expect(await values()).toEqual([]);
  });
});
