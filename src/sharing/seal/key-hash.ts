import { fromBase64Url, toBase64Url } from './bytes';

/**
 * What an edition may commit to ahead: SHA-256 of the raw public key that will come next, base64url. Whoever steals the
 * present key then still can't hand the pack over to a key of his own.
 * @param key raw public key, base64url
 */
export async function keyHash(key: string): Promise<string> {
  const hash = await crypto.subtle.digest('SHA-256', fromBase64Url(key) ?? new Uint8Array());
  return toBase64Url(new Uint8Array(hash));
}
