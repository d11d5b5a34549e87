import * as z from 'zod/mini';
import { canonicalJson } from './canonical';
import { fingerprintOf } from './fingerprint';
import { splitId } from './pack-id';
import { isPublicKey, isSignedBy, publicKeyOf, type SigningKeys, sign } from './signature';

z.config({ jitless: true });

/*
 * A pack's key is changed by both keys: the old one says whom it hands over to, the new one that it takes over. Both sign
 * the same words: the pack's id, the edition from which on the new key seals, the old key and the new one. A key that was
 * lost can't sign, so its pack ends there: what the keeper publishes then is a new pack with a new id, and is called so.
 */

export const KeyChange = z.strictObject({
  /** The first edition that the new key seals. */
  edition: z.int().check(z.gte(2)),
  /** The old key and the new one, raw, base64url. */
  from: z.string(),
  key: z.string(),
  /** Of the old key and of the new one, over the statement. */
  old: z.string(),
  new: z.string(),
});
export type KeyChange = z.infer<typeof KeyChange>;

/** More changes than any club will see; all of them are checked whenever the file is opened. */
export const MOST_KEY_CHANGES = 100;

/** What both keys sign. */
function statementOf(pack: string, { edition, from, key }: Pick<KeyChange, 'edition' | 'from' | 'key'>): string {
  return canonicalJson({ edition, from, key, pack })!;
}

/** Hands a pack over from one key to another. @param edition the first that the new key will seal */
export async function changeKey(pack: string, edition: number, from: SigningKeys, to: SigningKeys): Promise<KeyChange> {
  const keys = { edition, from: await publicKeyOf(from), key: await publicKeyOf(to) };
  const statement = statementOf(pack, keys);
  return { ...keys, old: await sign('keyChange', statement, from), new: await sign('keyChange', statement, to) };
}

/**
 * Does the history lead from the key that founded the pack (its fingerprint stands in the id) to this key? Each change is
 * signed by both its keys, editions only grow and end no later than this one, and no key comes back.
 */
export async function leadsFromFounder(
  id: string,
  history: readonly KeyChange[],
  key: string,
  edition: number,
): Promise<boolean> {
  const { founder } = splitId(id);
  if (founder === null || !isPublicKey(key) || (await fingerprintOf(history[0]?.from ?? key)) !== founder) return false;
  const seen = new Set<string>();
  let before = 1;
  for (const [i, change] of history.entries()) {
    const chained = i === 0 || change.from === history[i - 1]!.key;
    if (!chained || change.edition <= before || change.edition > edition || seen.has(change.from)) return false;
    const statement = statementOf(id, change);
    if (!(await isSignedBy(change.from, change.old, 'keyChange', statement))) return false;
    if (!(await isSignedBy(change.key, change.new, 'keyChange', statement))) return false;
    seen.add(change.from);
    before = change.edition;
  }
  return !seen.has(key) && (history.at(-1)?.key ?? key) === key;
}
