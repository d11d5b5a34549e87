import * as z from 'zod/mini';
import { contentHash } from '../../pack/compiled/content-hash';
import type { Pack } from '../../pack/schema/index';
import { canonicalJson, isCanonical } from '../seal/canonical';
import { EditionRef } from '../seal/edition-ref';
import { applyChanges } from './apply-changes';
import { BriefChange, fromBrief, inBrief } from './change-file';
import { diffPacks } from './diff-packs';
import { isShallow } from './shallow';

z.config({ jitless: true });

/*
 * Promises: a small file makes the sealed file of the next edition out of the edition that a reader has, byte for byte.
 * The first line is the next edition's seal, the second what changes, in canonical JSON. It needs no signature of its
 * own: what comes out is opened as any sealed file is, so nothing in a wrong or hostile update need be believed. What comes out is
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

/** @param before the edition that readers have; @param sealed the whole sealed file of the next one */
export async function writeUpdate(before: Pack, sealed: string): Promise<string> {
  const end = sealed.indexOf('\n');
  const body = sealed.slice(end + 1);
  const after = JSON.parse(body) as Pack;
  const update: z.infer<typeof Update> = {
    update: 1,
    pack: after.about.id,
    from: { edition: before.about.edition, hash: await contentHash(canonicalJson(before)!) },
    to: { edition: after.about.edition, hash: await contentHash(body) },
    changes: inBrief(diffPacks(before, after)),
  };
  return `${sealed.slice(0, end)}\n${canonicalJson(update)}`;
}

/** form: no update; another-edition: it is for one that isn't here; result: no pack could be sealed that comes out. */
export type UpdateProblem = 'form' | 'another-edition' | 'too-large' | 'result';
export type Updated = { sealed: string; problem?: undefined } | { problem: UpdateProblem };

/**
 * @param here the edition that is here: its JSON text and the hash of that
 * @returns the next edition's sealed file, still to be opened (open-seal.ts) and judged (judge.ts). Never throws.
 */
export function applyUpdate(text: string, here: { json: string; hash: string }): Updated {
  if (text.length > LARGEST) return { problem: 'too-large' };
  const end = text.indexOf('\n');
  const update = readUpdate(text.slice(end + 1));
  if (!update || end < 0) return { problem: 'form' };
  if (update.from.hash !== here.hash) return { problem: 'another-edition' };
  const { pack, misfits } = applyChanges(JSON.parse(here.json) as Pack, fromBrief(update.changes), false);
  const body = misfits.length > 0 ? null : asJson(pack);
  if (body === null) return { problem: 'result' };
  return body.length > LARGEST_RESULT ? { problem: 'too-large' } : { sealed: `${text.slice(0, end)}\n${body}` };
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
