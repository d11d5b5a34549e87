import { keepEdition, keeperKeys, readDesk } from '../../src/keep/desks';
import { readKnown } from '../../src/keep/known';
import { readText } from '../../src/keep/packs';
import type { KeptKnown } from '../../src/keep/schema';
import type { Pack } from '../../src/pack/schema/index';
import type { Question, Replies } from '../../src/session/engine-messages';
import { deskTold, openDesk } from '../../src/session/keeper/desk';
import type { DeskTold } from '../../src/session/keeper/desk-told';
import { nextEdition, nextNumber } from '../../src/session/keeper/next-edition';
import { makeKeys, SHORTEST_PASSPHRASE } from '../../src/sharing/seal/keys';
import { splitId } from '../../src/sharing/seal/pack-id';
import { publicKeyOf } from '../../src/sharing/seal/signature';
import { withKeep } from './keep';

type Asked = Extract<Question, { about: 'desk' | 'publish' }>;

/** A keeper's desk, or a new edition made of what was decided there. */
export async function answerKeeper(question: Asked): Promise<Replies['desk' | 'publish']> {
  const { pack: id } = question;
  const [text, desk, keys, remembered] = await Promise.all([
    withKeep((db) => readText(db, id)),
    withKeep((db) => readDesk(db, id)),
    withKeep((db) => keeperKeys(db, id)),
    withKeep(readKnown),
  ]);
  const isThere = text.ok && text.value !== null && desk.ok && keys.ok && remembered.ok;
  if (!isThere) return question.about === 'desk' ? null : { state: 'not', why: 'gone' };
  const pack = JSON.parse(text.value as string) as Pack;
  const opened = await openDesk(pack, desk.value);
  const known = remembered.value.get(id) ?? null;
  const key = await keyOf(id, keys.value, known);
  if (question.about === 'desk')
    return deskTold(pack, opened, { key, next: nextNumber(pack, known) }, desk.value.published);
  if (key === 'elsewhere') return { state: 'not', why: 'key' };
  if (opened.merged.undecided.length > 0) return { state: 'not', why: 'undecided' };
  if (opened.merged.issues.length > 0) return { state: 'not', why: 'issues' };
  if (!keys.value && [...question.passphrase].length < SHORTEST_PASSPHRASE) return { state: 'not', why: 'passphrase' };
  const made = keys.value ? null : await makeKeys(question.passphrase);
  const sealing = (keys.value ?? made?.keys) as CryptoKeyPair;
  const edition = await nextEdition(pack, text.value as string, opened, sealing, known, question.at);
  const files = made
    ? [...edition.files, { name: `${edition.name}.key-backup.json`, text: made.backup }]
    : edition.files;
  const from = { text: text.value as string, desk: desk.value };
  const kept = await withKeep((db) => keepEdition(db, from, { ...edition, keys: sealing, files }));
  if (!kept.ok) return { state: 'trouble', trouble: kept.trouble };
  if (kept.value === 'stale') return { state: 'not', why: 'stale' };
  return { state: 'published', id: edition.pack.id, edition: edition.pack.edition };
}

/** A key that was handed over to another one since seals no longer. */
async function keyOf(id: string, keys: CryptoKeyPair | null, known: KeptKnown | null): Promise<DeskTold['key']> {
  if (!keys) return splitId(id).founder === null ? 'none' : 'elsewhere';
  return known && known.key !== (await publicKeyOf(keys)) ? 'elsewhere' : 'here';
}
