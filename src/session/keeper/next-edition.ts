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
 * The next edition of a pack with what was decided, sealed. A pack that was unsealed gets the id that these keys found.
 * @param text the present edition's; @param at ISO 8601 instant
 * @throws TypeError where the keys are not the pack's
 */
export async function nextEdition(
  pack: Pack,
  text: string,
  { merged, proposals }: OpenedDesk,
  keys: SigningKeys,
  at: string,
): Promise<NextEdition> {
  const { founder, name } = splitId(pack.about.id);
  const edition = pack.about.edition + 1;
  const next = { ...merged.pack, about: { ...merged.pack.about, edition } };
  const own = founder === null ? await founded(next, keys) : next;
  const previous = founder === null ? null : { edition: pack.about.edition, hash: await contentHash(text) };
  const sealed = await sealPack(own, keys, { previous });
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
      ...{ id: own.about.id, edition, installedAt: at, sealedBy: spokenFingerprint(fingerprint), hash, expires: null },
      text: json,
    },
    known: { id: own.about.id, key, edition, hash, next: null, earlier: [] },
    files: [...(await publication(sealed, founder === null ? [] : [pack])), ...answers],
  };
}
