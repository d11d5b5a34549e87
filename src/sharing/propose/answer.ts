import * as z from 'zod/mini';
import { Text } from '../../pack/schema/parts';
import { EditionRef } from '../seal/edition-ref';
import type { SigningKeys } from '../seal/signature';
import type { Json } from './json';
import { openSigned, writeSigned } from './signed-file';

z.config({ jitless: true });

/*
 * Promises: what a keeper answers to a proposal, change by change: a small file signed by the keeper's key and bound to
 * that one proposal, so that a member learns what became of every change, and why.
 */

export interface ChangeAnswer {
  /** The change's slot, see changes.ts. */
  slot: string;
  outcome: 'accepted' | 'edited' | 'declined';
  /** What was put there instead, where it was edited; left out: nothing is there. */
  now?: Json | undefined;
  /** Why it was edited or declined; "" where nothing is said. */
  reason: string;
}

const Answer = z.strictObject({
  /** The pack's id, and the hash by which the proposal is known. */
  pack: z.string(),
  proposal: EditionRef.shape.hash,
  /** The edition in which what was accepted will stand. */
  edition: z.int().check(z.gte(1)),
  changes: z
    .array(
      z.strictObject({
        slot: z.string(),
        outcome: z.enum(['accepted', 'edited', 'declined']),
        now: z.optional(z.custom<Json>((value) => value !== undefined)),
        reason: z.union([z.literal(''), Text]),
      }),
    )
    .check(z.maxLength(2000)),
});
export type Answer = z.infer<typeof Answer>;

export function writeAnswer(answer: Answer, keys: SigningKeys): Promise<string> {
  return writeSigned('answer', answer, keys);
}

/** Opens an answer, a file or a text that holds one. @param key the pack's key, for nobody else answers for it */
export async function openAnswer(text: string, key: string): Promise<Answer | null> {
  const opened = await openSigned('answer', text);
  return opened?.key === key ? (Answer.safeParse(opened.content).data ?? null) : null;
}
