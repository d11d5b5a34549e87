import type { PackWithText } from '../../keep/packs';
import type { KeptKnown } from '../../keep/schema';
import { contentHash } from '../../pack/compiled/content-hash';
import type { Pack } from '../../pack/schema/index';
import { writeAnswer } from '../../sharing/propose/answer';
import { spokenFingerprint } from '../../sharing/seal/fingerprint';
import { openSealed } from '../../sharing/seal/open-seal';
import { splitId } from '../../sharing/seal/pack-id';
import { founded, sealPack } from '../../sharing/seal/seal';
import type { SigningKeys } from '../../sharing/seal/signature';
import { isOver } from '../../sharing/subscribe/against-known';
import { type FileToPublish, publication } from '../../sharing/subscribe/publication';
import type { OpenedDesk } from './desk';

export interface NextEdition {
  name: string;
  pack: PackWithText;
  known: KeptKnown;
  /** What goes to the host, and an answer to each proposal's author. */
  files: FileToPublish[];
}

/**
 * The number of the edition that comes next: also where the keeper has gone back to an earlier one, for two editions of
 * one number would be two packs to whoever follows.
 */
export function nextNumber(pack: Pack, known: Pick<KeptKnown, 'edition'> | null): number {
  return Math.max(pack.about.edition, known?.edition ?? 0) + 1;
}

/**
 * The next edition of a pack with what was decided, sealed. A pack that was unsealed gets the id that these keys found.
 * @param text the present edition's; @param known what is remembered of the pack; @param at ISO 8601 instant
 * @throws TypeError where the keys are not the pack's
 */
export async function nextEdition(
  pack: Pack,
  text: string,
  { merged, proposals }: OpenedDesk,
  keys: SigningKeys,
  known: KeptKnown | null,
  at: string,
): Promise<NextEdition> {
  const { founder, name } = splitId(pack.about.id);
  const edition = nextNumber(pack, known);
  const { expires, ...about } = merged.pack.about;
  // A last day is an edition's own: one that has passed was of another edition.
  const lasts = expires === undefined || isOver(expires, at.slice(0, 10)) ? {} : { expires };
  const decided = { ...merged.pack, about: { ...about, ...lasts, edition } };
  const own = founder === null ? await founded(decided, keys) : decided;
  const here = { edition: pack.about.edition, hash: await contentHash(text) };
  const previous = founder === null ? null : known && known.edition > here.edition ? known : here;
  const next = known?.next ?? null;
  const sealed = await sealPack(own, keys, {
    previous: previous && { edition: previous.edition, hash: previous.hash },
    next,
  });
  const opened = await openSealed(sealed);
  if (opened.issues) throw new TypeError('What was sealed does not open.');
  const { json, hash, key, fingerprint } = opened;
  const answers = await Promise.all(
    proposals.map(async ({ hash: proposal, author }, i) => ({
      name: `answer-${i + 1}-${author.name.replace(/[^\p{L}\p{N}]+/gu, '-')}.answer`,
      text: await writeAnswer({ pack: own.about.id, proposal, edition, changes: merged.answers[i] ?? [] }, keys),
    })),
  );
  return {
    name,
    pack: {
      ...{
        id: own.about.id,
        edition,
        installedAt: at,
        sealedBy: spokenFingerprint(fingerprint),
        hash,
        expires: opened.expires,
      },
      text: json,
    },
    known: { id: own.about.id, key, edition, hash, next, earlier: known?.earlier ?? [] },
    files: [...(await publication(sealed, founder === null ? [] : [pack])), ...answers],
  };
}
