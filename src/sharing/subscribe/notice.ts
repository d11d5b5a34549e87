import * as z from 'zod/mini';

z.config({ jitless: true });

/** SHA-256 in hexadecimal digits: what a published file is called by, so that an address never changes its content. */
const Hash = z.string().check(z.regex(/^[0-9a-f]{64}$/));
const Bytes = z.int().check(z.gte(1));
const Edition = z.int().check(z.gte(1));

/** A published file, by the SHA-256 of its bytes, and how many bytes it has. */
const PublishedFile = z.object({ sha256: Hash, bytes: Bytes });

/** Editions back for which a keeper offers small updates: more would make the notice large for everybody. */
export const MOST_CHANGES = 40;

/**
 * The one file of a publication whose address stays the same: which edition is the newest, and in which files beside it
 * that stands. It is small, for every subscriber fetches it every day. It is not sealed: what it names is. A host that
 * lies in it can hold an edition back, and put nothing in its place.
 */
const Notice = z.object({
  notice: z.literal(1),
  /** The pack's id. */
  pack: z.string().check(z.regex(/^[a-z0-9](?:[a-z0-9-]*[a-z0-9])?$/), z.maxLength(80)),
  edition: Edition,
  /** The whole pack, sealed or plain. */
  file: PublishedFile,
  /** What changed since earlier editions, for whoever has one of them: a small file instead of the whole. */
  changes: z.array(z.object({ from: Edition, file: PublishedFile })).check(z.maxLength(MOST_CHANGES)),
});

export type PublishedFile = z.infer<typeof PublishedFile>;
export type Notice = z.infer<typeof Notice>;

/** Bytes that a notice may have, decoded. */
export const LARGEST_NOTICE = 16_000;

/** Reads a notice; null for anything else. Keys that it doesn't know are a later version's, and are let be. */
export function readNotice(text: string): Notice | null {
  try {
    return Notice.safeParse(JSON.parse(text)).data ?? null;
  } catch {
    return null;
  }
}

/** Where a file that a notice names stands: beside it. */
export function addressBeside(notice: string, { sha256 }: PublishedFile, kind: 'pack' | 'changes'): string {
  return new URL(`${sha256}.${kind}`, notice).href;
}
