import type { Pack } from '../../pack/schema/index';
import { canonicalJson } from './canonical';
import type { EditionRef } from './edition-ref';
import { fingerprintOf } from './fingerprint';
import type { KeyChange } from './key-change';
import { leadsFromFounder } from './key-change';
import { sealedId, withId } from './pack-id';
import { type Seal, sealedText } from './seal-line';
import { publicKeyOf, type SigningKeys, sign } from './signature';

/** What an edition's seal says beside the key. */
export interface SealOptions {
  /** How the pack came to this key, oldest first; a new change (key-change.ts) comes last. */
  history?: readonly KeyChange[];
  /** The last day of this edition, YYYY-MM-DD. */
  expires?: string | null;
  /** Hash of the key that will come next, see key-hash.ts. */
  next?: string | null;
  /** The edition before. */
  previous?: EditionRef | null;
}

/**
 * Seals a pack. Its id must carry the fingerprint of the key that founded it (see `founded`), and the history must lead
 * from there to these keys.
 * @returns the whole file's text: the seal's line, then the pack's canonical JSON
 * @throws TypeError where the pack isn't this key's, or holds what JSON can't say
 */
export async function sealPack(pack: Pack, keys: SigningKeys, options: SealOptions = {}): Promise<string> {
  const { history = [], expires, next, previous } = options;
  const key = await publicKeyOf(keys);
  const body = canonicalJson(pack);
  if (body === undefined) throw new TypeError('A pack is a JSON value.');
  if (!(await leadsFromFounder(pack.about.id, history, key, pack.about.edition)))
    throw new TypeError('The pack’s id is not of this key, and no history leads to it.');
  const seal: Omit<Seal, 'signature'> = {
    ...{ seal: 1, key, history: [...history] },
    ...(expires ? { expires } : {}),
    ...(next ? { next } : {}),
    ...(previous ? { previous } : {}),
  };
  const signature = await sign('seal', sealedText(seal, body), keys);
  return `${canonicalJson({ ...seal, signature })}\n${body}`;
}

/** The pack under the id that it has when these keys found it: the last thing before its first edition is sealed. */
export async function founded(pack: Pack, keys: Pick<SigningKeys, 'publicKey'>): Promise<Pack> {
  return withId(pack, sealedId(pack.about.id, await fingerprintOf(await publicKeyOf(keys))));
}
