import * as z from 'zod/mini';
import type { Pack } from '../../pack/schema/index';
import { canonicalJson, isCanonical } from '../seal/canonical';
import { type OpenedSeal, openSealed } from '../seal/open-seal';
import { EditionRef } from '../seal/seal-line';
import { applyChanges } from './apply-changes';
import { BriefChange, fromBrief, inBrief } from './change-file';
import { diffPacks } from './diff-packs';
import { isShallow } from './shallow';

z.config({ jitless: true });

/*
 * Promises: a small file makes the sealed file of the next edition out of the edition that a reader has, byte for byte.
 * The first line is the next edition's seal, the second what changes, in canonical JSON. It needs no signature of its
 * own: what comes out is opened as any sealed file is, so a wrong or hostile update makes nothing. What comes out is
 * bounded by what goes in: a change can add only what it spells out.
 */

const Update = z.strictObject({
  update: z.literal(1),
  pack: z.string(),
  from: EditionRef,
  to: EditionRef,
  changes: z.array(BriefChange),
});

/** UTF-16 units of an update, and of the edition that comes out: the cap on packs. */
const LARGEST = 20_000_000;
const LARGEST_RESULT = 200_000_000;
/** Packs are nested 24 levels deep at most, and stand three levels deep in an update. */
const MOST_DEPTH = 27;

/** What is needed of a sealed edition, before and after. */
export type Edition = Pick<OpenedSeal, 'pack' | 'edition' | 'hash'>;

/** @param sealed the whole sealed file of the later edition, which `after` is */
export function writeUpdate(before: Edition, after: Edition, sealed: string): string {
  const update: z.infer<typeof Update> = {
    update: 1,
    pack: after.pack.about.id,
    from: { edition: before.edition, hash: before.hash },
    to: { edition: after.edition, hash: after.hash },
    changes: inBrief(diffPacks(before.pack, after.pack)),
  };
  return `${sealed.slice(0, sealed.indexOf('\n'))}\n${canonicalJson(update)}`;
}

/** form: no update; another-pack; another-edition: it is for one that the reader hasn't; too-large; result: what comes out is not what was sealed. */
export type UpdateProblem = 'form' | 'another-pack' | 'another-edition' | 'too-large' | 'result';
export type Updated = { sealed: string; opened: OpenedSeal; problem?: undefined } | { problem: UpdateProblem };

/** @returns the next edition's sealed file and what it holds; whether to take it: judge.ts. Never throws. */
export async function applyUpdate(before: Edition, text: string): Promise<Updated> {
  if (text.length > LARGEST) return { problem: 'too-large' };
  const end = text.indexOf('\n');
  const update = readUpdate(text.slice(end + 1));
  if (!update || end < 0) return { problem: 'form' };
  if (update.pack !== before.pack.about.id) return { problem: 'another-pack' };
  if (update.from.hash !== before.hash) return { problem: 'another-edition' };
  const { pack } = applyChanges(before.pack, fromBrief(update.changes), false);
  const body = asJson(pack);
  if (body === null) return { problem: 'result' };
  if (body.length > LARGEST_RESULT) return { problem: 'too-large' };
  const sealed = `${text.slice(0, end)}\n${body}`;
  const opened = await openSealed(sealed);
  if (opened.issues || opened.hash !== update.to.hash || opened.edition !== update.to.edition)
    return { problem: 'result' };
  return { sealed, opened };
}

function asJson(pack: Pack): string | null {
  try {
    return canonicalJson(pack) ?? null;
  } catch {
    return null;
  }
}

function readUpdate(text: string): z.infer<typeof Update> | null {
  try {
    const data: unknown = JSON.parse(text);
    return isShallow(data, MOST_DEPTH) && isCanonical(text) ? (Update.safeParse(data).data ?? null) : null;
  } catch {
    return null;
  }
}
