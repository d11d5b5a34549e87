import { fromBase64Url, toBase64Url } from './bytes';
import { CONTEXTS, type Context } from './contexts';
import { isWeakKey } from './weak-key';

/*
 * Ed25519 (RFC 8032) as the platform's WebCrypto gives it. What is signed is the context's line, a line feed, and the
 * text's bytes in UTF-8: nothing is hashed first, so no other text can stand under a signature by a hash that collides.
 */

/** Of a raw public key (RFC 8032, section 5.1.5). */
export const KEY_BYTES = 32;
const SIGNATURE_BYTES = 64;

/** Keys that can sign. The private half need not be extractable, the public half is. */
export interface SigningKeys {
  privateKey: CryptoKey;
  publicKey: CryptoKey;
}

/** @returns the signature in base64url */
export async function sign(context: Context, text: string, keys: SigningKeys): Promise<string> {
  const signature = await crypto.subtle.sign('Ed25519', keys.privateKey, signedBytes(context, text));
  return toBase64Url(new Uint8Array(signature));
}

/** Is it this key's signature for this purpose over exactly this text? Never throws: what can't be read is none. */
export async function isSignedBy(key: string, signature: string, context: Context, text: string): Promise<boolean> {
  const raw = fromBase64Url(key);
  const bytes = fromBase64Url(signature);
  if (raw?.length !== KEY_BYTES || bytes?.length !== SIGNATURE_BYTES || isWeakKey(raw)) return false;
  try {
    const imported = await crypto.subtle.importKey('raw', raw, 'Ed25519', false, ['verify']);
    return await crypto.subtle.verify('Ed25519', imported, bytes, signedBytes(context, text));
  } catch {
    return false;
  }
}

/** The public half as it stands in files: raw, base64url. */
export async function publicKeyOf(keys: Pick<SigningKeys, 'publicKey'>): Promise<string> {
  return toBase64Url(new Uint8Array(await crypto.subtle.exportKey('raw', keys.publicKey)));
}

/** Is it a public key as it stands in files: 32 bytes, base64url? */
export function isPublicKey(text: string): boolean {
  return fromBase64Url(text)?.length === KEY_BYTES;
}

function signedBytes(context: Context, text: string): Uint8Array<ArrayBuffer> {
  return new TextEncoder().encode(`${CONTEXTS[context]}\n${text}`);
}
