import * as z from 'zod/mini';
import { PartialDate } from '../../pack/schema/parts';
import { canonicalJson, isCanonical } from './canonical';
import { EditionRef } from './edition-ref';
import { LONGEST_LINE } from './is-sealed';
import { KeyChange, MOST_KEY_CHANGES } from './key-change';

z.config({ jitless: true });

/** The first line of a sealed pack, in canonical form. All of it but the signature itself is signed with the pack. */
export const Seal = z.strictObject({
  seal: z.literal(1),
  /** Ed25519 public key, raw, base64url. */
  key: z.string(),
  /** Over the context, this line without the signature, and the exact bytes after this line. */
  signature: z.string(),
  /** How the pack came from the key that founded it to this one; empty where it never changed hands. */
  history: z.array(KeyChange).check(z.maxLength(MOST_KEY_CHANGES)),
  /** The last day on which this edition should be trusted without looking for a newer one, unless the pack says an earlier one. */
  expires: z.optional(PartialDate.check(z.length(10))),
  /** See key-hash.ts: the only key to which this one can be changed. */
  next: z.optional(z.string().check(z.regex(/^[A-Za-z0-9_-]{43}$/))),
  /** The edition that came before. */
  previous: z.optional(EditionRef),
});
export type Seal = z.infer<typeof Seal>;

/** The seal and what follows it; null where the first line is none: an unsealed pack, or no pack at all. */
export function splitSealed(text: string): { seal: Seal; body: string } | null {
  const end = text.indexOf('\n');
  if (end < 0 || end > LONGEST_LINE) return null;
  const line = text.slice(0, end);
  try {
    const seal = isCanonical(line) ? Seal.safeParse(JSON.parse(line)).data : undefined;
    return seal ? { seal, body: text.slice(end + 1) } : null;
  } catch {
    return null;
  }
}

/** What is signed after the context: the line without its signature, a line feed, the body. */
export function sealedText(seal: Omit<Seal, 'signature'>, body: string): string {
  const { signature: _, ...rest } = seal as Seal;
  return `${canonicalJson(rest)}\n${body}`;
}
