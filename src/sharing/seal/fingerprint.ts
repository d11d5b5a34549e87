import { fromBase64Url } from './bytes';

/*
 * What a key is known by: the first 130 bits of the SHA-256 of the raw public key (FIPS 180-4). Two forms say the same:
 * 26 letters and digits, as they stand in pack ids (base32 of RFC 4648, in lower case), and 40 decimal digits in ten
 * groups of four, to read aloud in any language.
 */

const LETTERS = 'abcdefghijklmnopqrstuvwxyz234567';
const BITS = 130;
export const FINGERPRINT_LENGTH = BITS / 5;
/** 2 to the power of 130 has 40 decimal digits. */
const DIGITS = 40;

/** @param key raw public key, base64url */
export async function fingerprintOf(key: string): Promise<string> {
  const hash = new Uint8Array(await crypto.subtle.digest('SHA-256', fromBase64Url(key) ?? new Uint8Array()));
  let fingerprint = '';
  let held = 0;
  let bits = 0;
  for (const byte of hash) {
    held = (held << 8) | byte;
    for (bits += 8; bits >= 5 && fingerprint.length < FINGERPRINT_LENGTH; bits -= 5)
      fingerprint += LETTERS[(held >> (bits - 5)) & 31];
    held &= (1 << bits) - 1;
    if (fingerprint.length === FINGERPRINT_LENGTH) break;
  }
  return fingerprint;
}

export function isFingerprint(text: string): boolean {
  return new RegExp(`^[a-z2-7]{${FINGERPRINT_LENGTH}}$`).test(text);
}

/** "0123 4567 …": the same fingerprint in digits. */
export function spokenFingerprint(fingerprint: string): string {
  let number = 0n;
  for (const letter of fingerprint) number = number * 32n + BigInt(Math.max(LETTERS.indexOf(letter), 0));
  return number.toString().padStart(DIGITS, '0').match(/.{4}/g)!.join(' ');
}

/** Digits that somebody read out or wrote down, however grouped, as a fingerprint; null where they are none. */
export function fingerprintFromSpoken(digits: string): string | null {
  const bare = digits.replace(/[\s.,-]/g, '');
  if (!/^\d+$/.test(bare) || bare.length !== DIGITS) return null;
  let number = BigInt(bare);
  if (number >> BigInt(BITS) !== 0n) return null;
  let fingerprint = '';
  for (let i = 0; i < FINGERPRINT_LENGTH; i++) {
    fingerprint = LETTERS[Number(number & 31n)] + fingerprint;
    number >>= 5n;
  }
  return fingerprint;
}
