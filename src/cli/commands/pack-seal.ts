import type { Pack } from '../../pack/schema/index';
import { lastDay } from '../../sharing/last-day';
import { fingerprintOf, spokenFingerprint } from '../../sharing/seal/fingerprint';
import { changeKey, type KeyChange } from '../../sharing/seal/key-change';
import { keyHash } from '../../sharing/seal/key-hash';
import { keyOfBackup, makeKeys, SHORTEST_PASSPHRASE } from '../../sharing/seal/keys';
import type { OpenedSeal } from '../../sharing/seal/open-seal';
import { splitId, withId } from '../../sharing/seal/pack-id';
import { founded, type SealOptions, sealPack } from '../../sharing/seal/seal';
import { publicKeyOf, type SigningKeys } from '../../sharing/seal/signature';
import { packCliTexts as texts } from '../../text/catalogue/pack-cli';
import { dayOf } from '../arguments';
import { BadInput } from '../bad-input';
import { readText } from '../input-file';
import { readKeys, readPassphrase } from '../key-file';
import { writeOutput } from '../output-file';
import { readAnyPack, readSealed } from '../sealed-file';
import { needed, one, type PackValues } from './pack-options';

/** `pack key`: a new key, in a file that its passphrase opens. */
export async function keyCommand(files: string[], values: PackValues): Promise<string> {
  if (files.length > 0) throw new BadInput(texts.countOfFiles('key', texts.none, files.length, texts.usage));
  const passphraseFile = needed(values, 'passphrase');
  const out = needed(values, 'out');
  const passphrase = readPassphrase(passphraseFile);
  if ([...passphrase.normalize('NFC')].length < SHORTEST_PASSPHRASE)
    throw new BadInput(texts.passphraseShort(passphraseFile, SHORTEST_PASSPHRASE));
  const { keys, backup } = await makeKeys(passphrase);
  // A key file is never written over: what it opens can't be made again.
  writeOutput(out, backup, false, 0o600);
  return `${texts.keyMade(out, await spokenKey(await publicKeyOf(keys)))}\n`;
}

/** `pack seal`: a pack as the sealed file of one edition, the first one or one that follows another. */
export async function sealCommand(files: string[], values: PackValues): Promise<string> {
  const path = one('seal', files);
  const out = needed(values, 'out');
  const keys = await readKeys(needed(values, 'key'), needed(values, 'passphrase'));
  const plain = await readAnyPack(path);
  const over = values.over === undefined ? null : await readSealed(values.over);
  const pack = over ? following(path, plain, over) : await firstOf(path, plain, keys);
  const history = over ? await historyFor(pack, over, keys, values) : [];
  const options: SealOptions = {
    history,
    ...(values.expires === undefined ? {} : { expires: dayOf(values.expires, '--expires') }),
    ...(over ? { previous: { edition: over.edition, hash: over.hash } } : {}),
    next: await nextFor(over, keys, values),
  };
  const { expires } = options;
  if (expires && pack.about.expires !== undefined && lastDay(pack.about, null) !== expires)
    throw new BadInput(texts.otherLastDay(path, pack.about.expires, expires));
  const text = await sealPack(pack, keys, options);
  const wrote = texts.wrote(out, writeOutput(out, text, values.force));
  const { id, edition } = pack.about;
  const lines = [`${wrote}: ${texts.sealedFile(id, edition, await spokenKey(await publicKeyOf(keys)))}`];
  if (id !== plain.about.id && !over) lines.push(texts.founded(plain.about.id, id));
  return `${lines.join('\n')}\n`;
}

/** A pack that is sealed for the first time gets its id; one that has it must be this key's. */
async function firstOf(path: string, pack: Pack, keys: SigningKeys): Promise<Pack> {
  const { founder } = splitId(pack.about.id);
  const own = founder === null || founder === (await fingerprintOf(await publicKeyOf(keys)));
  if (!own) throw new BadInput(texts.foreignId(path, pack.about.id));
  return founded(pack, keys);
}

/** The pack as the edition after another one, whose id it takes where it has the plain name of it. */
function following(path: string, pack: Pack, over: OpenedSeal): Pack {
  const { id } = over.pack.about;
  if (![id, splitId(id).name].includes(pack.about.id)) throw new BadInput(texts.otherPack(path, pack.about.id, id));
  if (pack.about.edition <= over.edition)
    throw new BadInput(texts.editionGrows(path, pack.about.edition, over.edition));
  return withId(pack, id);
}

async function historyFor(pack: Pack, over: OpenedSeal, keys: SigningKeys, values: PackValues): Promise<KeyChange[]> {
  const key = await publicKeyOf(keys);
  if (key === over.key) return over.history;
  const oldKey = values['old-key'];
  if (oldKey === undefined) throw new BadInput(texts.otherKey(values.key!, values.over!));
  const old = await readKeys(oldKey, values['old-passphrase'] ?? needed(values, 'passphrase'));
  if ((await publicKeyOf(old)) !== over.key) throw new BadInput(texts.otherKey(oldKey, values.over!));
  if (over.next !== null && (await keyHash(key)) !== over.next) throw new BadInput(texts.notCommitted(values.key!));
  return [...over.history, await changeKey(pack.about.id, pack.about.edition, old, keys)];
}

/** The key that comes next: as it was committed to before, for as long as the key stays. */
async function nextFor(over: OpenedSeal | null, keys: SigningKeys, values: PackValues): Promise<string | null> {
  const stays = over !== null && over.key === (await publicKeyOf(keys));
  if (values.next === undefined) return stays ? over.next : null;
  const key = keyOfBackup(readText(values.next));
  if (key === null) throw new BadInput(texts.notAKey(values.next));
  const hash = await keyHash(key);
  if (stays && over.next !== null && over.next !== hash) throw new BadInput(texts.notCommitted(values.next));
  return hash;
}

async function spokenKey(key: string): Promise<string> {
  return spokenFingerprint(await fingerprintOf(key));
}
