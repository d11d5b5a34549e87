import * as z from 'zod/mini';
import { fromBase64Url, signedBytes, toBase64Url } from './bytes';
import { canonicalJson, isCanonical } from './canonical';

z.config({ jitless: true });

/** Fixed for this purpose and format: a signature under another context is not a pack's seal. */
const CONTEXT = 'bedplate pack seal 1';
const KEY_BYTES = 32;
const SIGNATURE_BYTES = 64;

/** The first line of a sealed pack. */
const Seal = z.strictObject({
  seal: z.literal(1),
  /** Ed25519 public key, raw, base64url. */
  key: z.string(),
  /** Over the context and the exact bytes after the first line. */
  signature: z.string(),
  /** Keys that sealed earlier editions, oldest first. */
  history: z.array(z.string()),
});

export type SealProblem = 'seal-form' | 'not-canonical' | 'signature';
export type Opened = { body: string; key: string; fingerprint: string } | { problem: SealProblem };

/** A sealed file's first line begins so; an unsealed pack is one JSON object with a schema. */
export function isSealed(text: string): boolean {
  const line = text.slice(0, text.indexOf('\n') + 1);
  return /^\{[^{}]*"seal"\s*:/.test(line);
}

/**
 * Opens a sealed pack: the seal's form, the signature over the exact bytes, the canonical form of the rest.
 * @returns the pack's JSON text and whose seal it is, or what is wrong. Never throws.
 */
export async function openSeal(text: string): Promise<Opened> {
  const lineEnd = text.indexOf('\n');
  const body = text.slice(lineEnd + 1);
  const seal = readSeal(text.slice(0, Math.max(lineEnd, 0)));
  if (!seal) return { problem: 'seal-form' };
  const key = fromBase64Url(seal.key);
  const signature = fromBase64Url(seal.signature);
  if (key?.length !== KEY_BYTES || signature?.length !== SIGNATURE_BYTES) return { problem: 'seal-form' };
  if (!(await verifies(key, signature, body))) return { problem: 'signature' };
  if (!isCanonical(body)) return { problem: 'not-canonical' };
  return { body, key: seal.key, fingerprint: await fingerprintOf(key) };
}

function readSeal(line: string): z.infer<typeof Seal> | null {
  try {
    return isCanonical(line) ? (Seal.safeParse(JSON.parse(line)).data ?? null) : null;
  } catch {
    return null;
  }
}

async function verifies(
  key: Uint8Array<ArrayBuffer>,
  signature: Uint8Array<ArrayBuffer>,
  body: string,
): Promise<boolean> {
  try {
    const imported = await crypto.subtle.importKey('raw', key, 'Ed25519', false, ['verify']);
    return await crypto.subtle.verify('Ed25519', imported, signature, signedBytes(CONTEXT, body));
  } catch {
    return false;
  }
}

/** Seals a pack with an Ed25519 key pair whose public half can be exported. @returns the whole file's text. */
export async function sealPack(pack: unknown, keys: { privateKey: CryptoKey; publicKey: CryptoKey }): Promise<string> {
  const body = canonicalJson(pack);
  if (body === undefined) throw new TypeError('A pack is a JSON value.');
  const signature = await crypto.subtle.sign('Ed25519', keys.privateKey, signedBytes(CONTEXT, body));
  const seal: z.infer<typeof Seal> = {
    seal: 1,
    key: toBase64Url(new Uint8Array(await crypto.subtle.exportKey('raw', keys.publicKey))),
    signature: toBase64Url(new Uint8Array(signature)),
    history: [],
  };
  return `${canonicalJson(seal)}\n${body}`;
}

/** The first 128 bits of the key's SHA-256, in hexadecimal groups of four, to read aloud. */
export async function fingerprintOf(key: Uint8Array<ArrayBuffer>): Promise<string> {
  const hash = new Uint8Array(await crypto.subtle.digest('SHA-256', key));
  const hex = [...hash.slice(0, 16)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return hex.match(/.{4}/g)!.join(' ');
}
