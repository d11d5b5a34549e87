import { expect } from 'vitest';
import { contentHash } from '../../../src/pack/compiled/content-hash';
import { openAnswer } from '../../../src/sharing/propose/answer';
import { keyOfBackup, restoreKeys } from '../../../src/sharing/seal/keys';
import { openSealed } from '../../../src/sharing/seal/open-seal';
import { readNotice } from '../../../src/sharing/subscribe/notice';
import { MEMBERS, PASSPHRASE } from './keeper-bench';
import type { Records } from './kept-records';

interface File {
  name: string;
  text: string;
}

/**
 * Holds what is kept of a published edition together: pack, text, what is remembered, the key, the files to be saved and
 * the desk are all of that edition, and the files open.
 * @param old the id under which it stood before, where it has been sealed for the first time
 */
export async function expectWholeEdition(now: Records, id: string, edition: number, old: string | null): Promise<void> {
  const { packs, texts, known, keys, desks } = now;
  const text = String(texts?.[id]?.text);
  const hash = await contentHash(text);
  const key = keys?.[id]?.keys;
  expect(packs?.[id]).toMatchObject({ edition, hash });
  expect(known?.[id]).toMatchObject({ edition, hash, key });
  const desk = desks?.[id] as { published: { edition: number; files: File[] } } | undefined;
  expect(desk).toMatchObject({ proposals: [], decisions: [], published: { edition } });
  const files = desk?.published.files ?? [];
  const ending = (end: string) => files.filter(({ name }) => name.endsWith(end)).map((file) => file.text);
  const opened = await openSealed(ending('.pack')[0] ?? '');
  expect(opened).toMatchObject({ edition, hash, key, json: text });
  expect(readNotice(ending('.notice.json')[0] ?? '')).toMatchObject({ pack: id, edition });
  const answers = await Promise.all(ending('.answer').map((each) => openAnswer(each, String(key))));
  expect(answers.map((answer) => answer?.changes.length)).toEqual(Array(MEMBERS).fill(1));
  if (old === null) return;
  for (const store of [packs, texts, desks]) expect(store).not.toHaveProperty(old);
  const [backup = ''] = ending('.key-backup.json');
  expect(keyOfBackup(backup)).toBe(key);
  expect(await restoreKeys(backup, PASSPHRASE)).not.toHaveProperty('problem');
}
