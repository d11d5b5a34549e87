import * as z from 'zod/mini';
import { fromBase64Url, toBase64Url } from './bytes';
import { canonicalJson } from './canonical';
import { isPublicKey, publicKeyOf, type SigningKeys } from './signature';

z.config({ jitless: true });

/*
 * Promises: keys are made once, together with their backup, and from then on the private half can't be had out of the
 * browser, not even by this program: it signs, and nothing else. The backup is a small file that only its passphrase
 * opens: PBKDF2 (RFC 8018) with HMAC-SHA-256 makes a key of the passphrase, AES-256-GCM (NIST SP 800-38D) wraps the
 * private half (PKCS #8) with it, and binds all that the file says beside it. Both are the platform's WebCrypto.
 */

/** So many rounds make a guess cost about a tenth of a second. OWASP's advice of 2023 for this function, from memory. */
const ROUNDS = 600_000;
/** A file that asks for more would only keep the reader waiting; one that asks for less is none of ours. */
const MOST_ROUNDS = 10_000_000;
const SALT_BYTES = 16;
const IV_BYTES = 12;
/** Characters of a passphrase, below which guessing is easy whatever the rounds. */
export const SHORTEST_PASSPHRASE = 10;

const Backup = z.strictObject({
  backup: z.literal(1),
  /** The public half, raw, base64url. */
  key: z.string(),
  kdf: z.strictObject({
    name: z.literal('PBKDF2-HMAC-SHA-256'),
    rounds: z.int().check(z.gte(ROUNDS), z.lte(MOST_ROUNDS)),
    salt: z.string(),
  }),
  cipher: z.strictObject({ name: z.literal('AES-256-GCM'), iv: z.string() }),
  /** The private half in PKCS #8, wrapped; base64url. */
  wrapped: z.string(),
});
type Backup = z.infer<typeof Backup>;

/**
 * Makes the keys that sign for a keeper or a member.
 * @returns the keys, of which the private one can't be extracted any more, and the backup file's text
 * @throws RangeError where the passphrase is shorter than SHORTEST_PASSPHRASE
 */
export async function makeKeys(passphrase: string): Promise<{ keys: SigningKeys; backup: string }> {
  if ([...passphrase.normalize('NFC')].length < SHORTEST_PASSPHRASE)
    throw new RangeError('The passphrase is too short.');
  const fresh = (await crypto.subtle.generateKey('Ed25519', true, ['sign', 'verify'])) as CryptoKeyPair;
  const said: Omit<Backup, 'wrapped'> = {
    backup: 1,
    key: await publicKeyOf(fresh),
    kdf: { name: 'PBKDF2-HMAC-SHA-256', rounds: ROUNDS, salt: random(SALT_BYTES) },
    cipher: { name: 'AES-256-GCM', iv: random(IV_BYTES) },
  };
  const wrapping = await wrappingKey(passphrase, said.kdf, ['encrypt']);
  const pkcs8 = await crypto.subtle.exportKey('pkcs8', fresh.privateKey);
  const wrapped = await crypto.subtle.encrypt(cipherOf(said), wrapping, pkcs8);
  const keys = { publicKey: fresh.publicKey, privateKey: await signingKey(pkcs8) };
  return { keys, backup: `${canonicalJson({ ...said, wrapped: toBase64Url(new Uint8Array(wrapped)) })}\n` };
}

export type RestoreProblem =
  /** no backup of this format */
  | 'form'
  /** the passphrase is another one, or the file was changed */
  | 'passphrase';

/** The keys of a backup file; the private one can't be extracted. Never throws. */
export async function restoreKeys(
  backup: string,
  passphrase: string,
): Promise<{ keys: SigningKeys; problem?: undefined } | { problem: RestoreProblem }> {
  const read = readBackup(backup);
  if (!read) return { problem: 'form' };
  const { wrapped, ...said } = read;
  try {
    const wrapping = await wrappingKey(passphrase, said.kdf, ['decrypt']);
    const pkcs8 = await crypto.subtle.decrypt(cipherOf(said), wrapping, fromBase64Url(wrapped)!);
    const publicKey = await crypto.subtle.importKey('raw', fromBase64Url(said.key)!, 'Ed25519', true, ['verify']);
    const keys = { publicKey, privateKey: await signingKey(pkcs8) };
    return (await belongTogether(keys)) ? { keys } : { problem: 'passphrase' };
  } catch {
    return { problem: 'passphrase' };
  }
}

/** The public key of a backup, without opening it: raw, base64url; null where it is none. */
export function keyOfBackup(backup: string): string | null {
  return readBackup(backup)?.key ?? null;
}

function readBackup(text: string): Backup | null {
  try {
    const read = Backup.safeParse(JSON.parse(text)).data;
    const parts = [read?.kdf.salt, read?.cipher.iv, read?.wrapped].map((part) => fromBase64Url(part ?? ''));
    const inOrder = parts[0]?.length === SALT_BYTES && parts[1]?.length === IV_BYTES && parts[2] !== null;
    return read && inOrder && isPublicKey(read.key) ? read : null;
  } catch {
    return null;
  }
}

async function wrappingKey(passphrase: string, kdf: Backup['kdf'], uses: KeyUsage[]): Promise<CryptoKey> {
  // Two ways to write one letter are one passphrase.
  const bytes = new TextEncoder().encode(passphrase.normalize('NFC'));
  const material = await crypto.subtle.importKey('raw', bytes, 'PBKDF2', false, ['deriveKey']);
  const salt = fromBase64Url(kdf.salt)!;
  const how = { name: 'PBKDF2', hash: 'SHA-256', iterations: kdf.rounds, salt };
  return crypto.subtle.deriveKey(how, material, { name: 'AES-GCM', length: 256 }, false, uses);
}

/** What the file says is bound to what it wraps: neither can be exchanged alone. */
function cipherOf(said: Omit<Backup, 'wrapped'>): AesGcmParams {
  const additionalData = new TextEncoder().encode(canonicalJson(said));
  return { name: 'AES-GCM', iv: fromBase64Url(said.cipher.iv)!, additionalData };
}

function signingKey(pkcs8: ArrayBuffer): Promise<CryptoKey> {
  return crypto.subtle.importKey('pkcs8', pkcs8, 'Ed25519', false, ['sign']);
}

async function belongTogether({ publicKey, privateKey }: SigningKeys): Promise<boolean> {
  const probe = new Uint8Array(1);
  return crypto.subtle.verify('Ed25519', publicKey, await crypto.subtle.sign('Ed25519', privateKey, probe), probe);
}

function random(bytes: number): string {
  return toBase64Url(crypto.getRandomValues(new Uint8Array(bytes)));
}
