import type { PackIssue } from '../pack/issues';
import { parsePack } from '../pack/parse';
import type { Pack } from '../pack/schema/index';
import { packTexts as texts } from '../text/catalogue/pack';
import { isSealed, openSeal } from './seal/seal';

export type OpenedPack =
  | { pack: Pack; json: string; sealedBy: string | null; issues?: undefined }
  | { issues: PackIssue[]; pack?: undefined };

/**
 * Opens a pack file, sealed or plain: what a person chooses in the workbench or names on the command line.
 * @returns the pack, its JSON text and the fingerprint of the key that sealed it (null: unsealed), or what is wrong.
 */
export async function openPackFile(text: string): Promise<OpenedPack> {
  if (!isSealed(text)) return withSeal(text, null);
  const opened = await openSeal(text);
  if ('problem' in opened) {
    const { what, expected } = texts.seal[opened.problem];
    return { issues: [{ path: '', what, expected }] };
  }
  return withSeal(opened.body, opened.fingerprint);
}

function withSeal(json: string, sealedBy: string | null): OpenedPack {
  const { pack, issues } = parsePack(json);
  return pack ? { pack, json, sealedBy } : { issues: issues ?? [] };
}
