import * as z from 'zod/mini';
import { contentHash } from '../../pack/compiled/content-hash';
import { Text } from '../../pack/schema/parts';
import { canonicalJson } from '../seal/canonical';
import { EditionRef } from '../seal/edition-ref';
import { fingerprintOf } from '../seal/fingerprint';
import type { SigningKeys } from '../seal/signature';
import { isHonest, WrittenChange } from './change-file';
import type { Change } from './changes';
import { openSigned, writeSigned } from './signed-file';

z.config({ jitless: true });

/*
 * Promises: a member's changes to a pack, for its keeper to weigh: a small file signed by the member's key, bound to one
 * pack, to the bytes of the edition that the member had, to the purpose of proposing, and to its author. Every change
 * says what was there and what should be, so the keeper can weigh it on a later edition as well. It makes nothing by
 * itself: merge-proposals.ts shows it beside the pack and beside other proposals.
 */

/** More than anybody will weigh one by one. */
export const MOST_CHANGES = 2000;

const Proposal = z.strictObject({
  /** The pack's id. */
  pack: z.string(),
  /** The edition that the author had. */
  base: EditionRef,
  purpose: z.literal('propose-changes'),
  author: z.strictObject({ name: Text }),
  /** Why; "" where nothing is said. */
  note: z.union([z.literal(''), Text]),
  changes: z.array(WrittenChange).check(z.minLength(1), z.maxLength(MOST_CHANGES)),
});

export interface Proposal {
  pack: string;
  base: { edition: number; hash: string };
  author: { name: string };
  note: string;
  changes: readonly Change[];
}

export interface OpenedProposal extends Proposal {
  /** The author's key and what it is known by. */
  key: string;
  fingerprint: string;
  /** What the proposal is known by: SHA-256 of its content, hexadecimal. */
  hash: string;
}

/** What only the keeper says: which pack and edition it is. */
function isKeepers(change: Change): boolean {
  if (change.part === '') return true;
  return change.part === 'about' && change.do === 'change' && ['id', 'edition'].includes(change.field[0] ?? '');
}

/** The changes that a proposal can hold: all but the pack's id, its edition and what is beside its parts. */
export function proposable(changes: readonly Change[]): Change[] {
  return changes.filter((change) => !isKeepers(change) || isPresence(change));
}

/** That an empty list or object appears in the pack, or is gone, is nobody's word in particular. */
function isPresence(change: Change): boolean {
  if (change.part !== '' || change.do !== 'change') return false;
  return [change.was, change.now].every((value) => value === undefined || ['[]', '{}'].includes(canonicalJson(value)!));
}

export function writeProposal(proposal: Proposal, keys: SigningKeys): Promise<string> {
  const { pack, base, author, note, changes } = proposal;
  return writeSigned('proposal', { pack, base, author, note, changes, purpose: 'propose-changes' }, keys);
}

/** Opens a proposal, a file or a text that holds one. @returns null: none, damaged, or not signed by its author. */
export async function openProposal(text: string): Promise<OpenedProposal | null> {
  const opened = await openSigned('proposal', text);
  const proposal = opened && Proposal.safeParse(opened.content).data;
  if (!proposal || proposable(proposal.changes).length < proposal.changes.length) return null;
  if (!proposal.changes.every(isHonest)) return null;
  const { key } = opened;
  const { purpose: _, ...rest } = proposal;
  return {
    ...rest,
    key,
    fingerprint: await fingerprintOf(key),
    hash: await contentHash(canonicalJson(opened.content)!),
  };
}
