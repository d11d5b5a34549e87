import * as z from 'zod/mini';
import { canonicalJson, isCanonical } from '../seal/canonical';
import type { Context } from '../seal/contexts';
import { isSignedBy, publicKeyOf, type SigningKeys, sign } from '../seal/signature';
import { isShallow } from './shallow';

z.config({ jitless: true });

/*
 * A small signed file: the first line is { key, signature, <kind>: 1 }, the rest canonical JSON. What is signed is the
 * line without the signature and the exact bytes after it, under the kind's own context. As text, for mail and forums,
 * it is the same bytes in base64url between two marks; quoting and line breaks on the way don't harm it.
 */

export type SignedKind = Extract<Context, 'proposal' | 'answer'>;

/** UTF-16 units. */
const LARGEST = 2_000_000;
/** Packs are nested 24 levels deep at most. */
const MOST_DEPTH = 28;

const Head = (kind: SignedKind) => z.strictObject({ [kind]: z.literal(1), key: z.string(), signature: z.string() });

export async function writeSigned(kind: SignedKind, content: unknown, keys: SigningKeys): Promise<string> {
  const head = { [kind]: 1, key: await publicKeyOf(keys) };
  const body = canonicalJson(content);
  const signature = await sign(kind, `${canonicalJson(head)}\n${body}`, keys);
  return `${canonicalJson({ ...head, signature })}\n${body}`;
}

/** @returns the content and the key that signed it, or null: no such file, or not a byte of it may be believed. */
export async function openSigned(kind: SignedKind, text: string): Promise<{ key: string; content: unknown } | null> {
  const file = text.includes(startOf(kind)) ? fromText(kind, text) : text;
  if (file === null || file.length > LARGEST) return null;
  const end = file.indexOf('\n');
  const [line, body] = [file.slice(0, Math.max(end, 0)), file.slice(end + 1)];
  try {
    if (!isCanonical(line)) return null;
    const head = Head(kind).safeParse(JSON.parse(line)).data as { key: string; signature: string } | undefined;
    if (!head) return null;
    const { signature, ...rest } = head;
    if (!(await isSignedBy(head.key, signature, kind, `${canonicalJson(rest)}\n${body}`))) return null;
    const content: unknown = JSON.parse(body);
    return isShallow(content, MOST_DEPTH) && isCanonical(body) ? { key: head.key, content } : null;
  } catch {
    return null;
  }
}

const startOf = (kind: SignedKind): string => `bedplate:${kind}:`;
const END = ':end';
const WIDTH = 64;

/** The file as lines of text to paste anywhere. */
export function toText(kind: SignedKind, file: string): string {
  const bytes = new TextEncoder().encode(file);
  let binary = '';
  for (const byte of bytes) binary += String.fromCharCode(byte);
  const letters = btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
  return [startOf(kind), ...(letters.match(new RegExp(`.{1,${WIDTH}}`, 'g')) ?? []), END].join('\n');
}

function fromText(kind: SignedKind, text: string): string | null {
  const start = text.indexOf(startOf(kind)) + startOf(kind).length;
  const end = text.indexOf(END, start);
  if (end < 0 || end - start > LARGEST * 4) return null;
  // What quoting a mail puts before its lines.
  const letters = text.slice(start, end).replace(/[\s>|]/g, '');
  if (!/^[A-Za-z0-9_-]*$/.test(letters)) return null;
  try {
    const binary = atob(letters.replaceAll('-', '+').replaceAll('_', '/'));
    const bytes = Uint8Array.from(binary, (character) => character.charCodeAt(0));
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return null;
  }
}
