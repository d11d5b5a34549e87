import type { PackIssue } from '../pack/issues';
import { parsePack } from '../pack/parse';
import type { Pack } from '../pack/schema/index';
import { sealTexts as texts } from '../text/catalogue/seal';
import { lastDay } from './last-day';
import { iJsonIssue } from './seal/i-json-issue';
import { isSealed } from './seal/is-sealed';
import type { OpenedSeal } from './seal/open-seal';
import { splitId } from './seal/pack-id';

export type OpenedPack =
  | {
      pack: Pack;
      json: string;
      sealedBy: string | null;
      seal: OpenedSeal | null;
      /** The last day of the edition, YYYY-MM-DD, or null. */
      expires: string | null;
      issues?: undefined;
    }
  | { issues: PackIssue[]; pack?: undefined };

/**
 * Opens a pack file, sealed or plain: what a person chooses in the workbench or names on the command line.
 * @returns the pack, its JSON text, the fingerprint of the key that sealed it as it is read aloud (null: unsealed) and
 * all that its seal says, or what is wrong. Whether it may take another edition's place: seal/judge.ts.
 */
export async function openPackFile(text: string): Promise<OpenedPack> {
  if (!isSealed(text)) {
    const { pack, issues } = parsePack(text);
    if (!pack) return { issues };
    const forbidden = iJsonIssue(text);
    if (forbidden) return { issues: [forbidden] };
    // Unsealed never takes a sealed pack's place, whether or not that one is here.
    if (splitId(pack.about.id).founder !== null)
      return { issues: [{ path: 'about.id', ...texts.unsealedId(pack.about.id) }] };
    return { pack, json: text, sealedBy: null, seal: null, expires: lastDay(pack.about, null) };
  }
  // Most files are plain, and whoever opens one needs nothing of keys and signatures.
  const [{ openSealed }, { spokenFingerprint }] = await Promise.all([
    import('./seal/open-seal'),
    import('./seal/fingerprint'),
  ]);
  const seal = await openSealed(text);
  if (seal.issues) return { issues: seal.issues };
  const { pack, json, expires } = seal;
  return { pack, json, sealedBy: spokenFingerprint(seal.fingerprint), seal, expires };
}
