import * as z from 'zod/mini';
import { contentHash } from '../../pack/compiled/content-hash';
import type { Pack } from '../../pack/schema/index';
import { applyChanges } from '../propose/apply-changes';
import type { Change } from '../propose/changes';
import { diffPacks } from '../propose/diff-packs';
import { canonicalJson } from '../seal/canonical';

z.config({ jitless: true });

/*
 * What changed between two editions, for whoever has the first: the seal's line of the new one, then one line of JSON. Who
 * puts it on the edition that he has gets the new sealed file byte for byte, or, where anything is amiss, something that
 * the new seal doesn't fit. So nothing in here need be believed.
 */

const Line = z.object({
  update: z.literal(1),
  /** SHA-256 of the JSON text of the edition that it is put on. */
  from: z.string(),
  changes: z.array(
    z.looseObject({ do: z.enum(['add', 'remove', 'change', 'move']), part: z.string(), entry: z.string() }),
  ),
});

/** @param before the edition that subscribers have; @param sealed the new edition's file */
export async function smallUpdate(before: Pack, sealed: string): Promise<string> {
  const end = sealed.indexOf('\n');
  const after = JSON.parse(sealed.slice(end + 1)) as Pack;
  const changes = diffPacks(before, after).map(withoutWhatIsGone);
  const from = await contentHash(canonicalJson(before) ?? '');
  return `${sealed.slice(0, end)}\n${JSON.stringify({ update: 1, from, changes } satisfies z.infer<typeof Line>)}`;
}

/** What an entry was that is removed, whoever has it knows. */
function withoutWhatIsGone(change: Change): Change & { [key: string]: unknown } {
  if (change.do !== 'remove') return { ...change };
  const { was: _, ...rest } = change;
  return rest;
}

/**
 * Puts an update on the edition that is here. Never throws.
 * @param json that edition's JSON text; @param hash its SHA-256
 * @returns the new edition's file, still to be opened and judged; null where the update is for another edition or doesn't fit
 */
export function withUpdate(update: string, json: string, hash: string): string | null {
  const end = update.indexOf('\n');
  try {
    const line = Line.parse(JSON.parse(update.slice(end + 1)));
    if (end < 0 || line.from !== hash) return null;
    const { pack, misfits } = applyChanges(JSON.parse(json) as Pack, line.changes as unknown as Change[]);
    const body = misfits.length > 0 ? undefined : canonicalJson(pack);
    return body === undefined ? null : `${update.slice(0, end)}\n${body}`;
  } catch {
    return null;
  }
}
