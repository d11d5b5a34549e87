import { keepEdition, keeperKeys, readDesk } from '../../src/keep/desks';
import { readText } from '../../src/keep/packs';
import type { Pack } from '../../src/pack/schema/index';
import type { Question, Replies } from '../../src/session/engine-messages';
import { deskTold, openDesk } from '../../src/session/keeper/desk';
import { nextEdition } from '../../src/session/keeper/next-edition';
import { makeKeys, SHORTEST_PASSPHRASE } from '../../src/sharing/seal/keys';
import { splitId } from '../../src/sharing/seal/pack-id';
import { withKeep } from './keep';

type Asked = Extract<Question, { about: 'desk' | 'publish' }>;

/** A keeper's desk, or a new edition made of what was decided there. */
export async function answerKeeper(question: Asked): Promise<Replies['desk' | 'publish']> {
  const { pack: id } = question;
  const [text, desk, keys] = await Promise.all([
    withKeep((db) => readText(db, id)),
    withKeep((db) => readDesk(db, id)),
    withKeep((db) => keeperKeys(db, id)),
  ]);
  const isThere = text.ok && text.value !== null && desk.ok && keys.ok;
  if (!isThere) return question.about === 'desk' ? null : { state: 'not', why: 'gone' };
  const pack = JSON.parse(text.value as string) as Pack;
  const opened = await openDesk(pack, desk.value);
  const key = keys.value ? 'here' : splitId(id).founder === null ? 'none' : 'elsewhere';
  if (question.about === 'desk') return deskTold(pack, opened, key, desk.value.published);
  if (key === 'elsewhere') return { state: 'not', why: 'key' };
  if (opened.merged.undecided.length > 0) return { state: 'not', why: 'undecided' };
  if (opened.merged.issues.length > 0) return { state: 'not', why: 'issues' };
  if (!keys.value && [...question.passphrase].length < SHORTEST_PASSPHRASE) return { state: 'not', why: 'passphrase' };
  const made = keys.value ? null : await makeKeys(question.passphrase);
  const sealing = (keys.value ?? made?.keys) as CryptoKeyPair;
  const edition = await nextEdition(pack, text.value as string, opened, sealing, question.at);
  const files = made
    ? [...edition.files, { name: `${edition.name}.key-backup.json`, text: made.backup }]
    : edition.files;
  const kept = await withKeep((db) => keepEdition(db, id, edition.pack, edition.known, sealing, files));
  if (!kept.ok) return { state: 'trouble', trouble: kept.trouble };
  return { state: 'published', id: edition.pack.id, edition: edition.pack.edition };
}
