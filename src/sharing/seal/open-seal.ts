import { contentHash } from '../../pack/compiled/content-hash';
import type { PackIssue } from '../../pack/issues';
import { parsePack } from '../../pack/parse';
import type { Pack } from '../../pack/schema/index';
import { sealTexts as texts } from '../../text/catalogue/seal';
import { lastDay } from '../last-day';
import { isCanonical } from './canonical';
import type { EditionRef } from './edition-ref';
import { fingerprintOf } from './fingerprint';
import { iJsonIssue } from './i-json-issue';
import { type KeyChange, leadsFromFounder } from './key-change';
import { splitId } from './pack-id';
import { sealedText, splitSealed } from './seal-line';
import { isSignedBy } from './signature';

/*
 * Promises: a file opens only if its seal is this key's over exactly these bytes, if the bytes are the canonical form
 * (RFC 8785) of what they parse to and I-JSON (RFC 7493), if they are a pack in order, and if the key history leads from
 * the key in the pack's id to the key that sealed. A change of any byte makes it another file, which doesn't open.
 * Whether this reader should take it, after what they had of this pack before, is judge.ts.
 */

export interface OpenedSeal {
  pack: Pack;
  /** The pack's canonical JSON: its bytes in UTF-8 are what the seal holds for. */
  json: string;
  /** SHA-256 of those bytes, in hexadecimal digits. */
  hash: string;
  /** The key that sealed this edition: raw, base64url; and what it is known by, see fingerprint.ts. */
  key: string;
  fingerprint: string;
  /** The fingerprint of the key that founded the pack, from its id. */
  founder: string;
  edition: number;
  /** How the pack came from the founding key to this one, oldest first. */
  history: KeyChange[];
  /** The last day of this edition, YYYY-MM-DD, by the pack or its seal: see last-day.ts. */
  expires: string | null;
  /** The hash of the only key to which this one can be changed, see key-hash.ts. */
  next: string | null;
  /** The edition before, as the keeper saw it. */
  previous: EditionRef | null;
}

/** 'pack': the seal is sound, what it holds is no pack in order. */
export type SealProblem = 'seal-form' | 'signature' | 'i-json' | 'not-canonical' | 'pack' | 'key-history';
export type Opening = (OpenedSeal & { issues?: undefined }) | { problem: SealProblem; issues: PackIssue[] };

/** Opens a sealed file and proves its seal. @returns what it holds, or what is wrong with it, in words. Never throws. */
export async function openSealed(text: string): Promise<Opening> {
  const split = splitSealed(text);
  if (!split) return refuse('seal-form');
  const { seal, body } = split;
  if (!(await isSignedBy(seal.key, seal.signature, 'seal', sealedText(seal, body)))) return refuse('signature');
  // First what a hostile keeper could exhaust memory or stack with; reading says so in its own words.
  const { pack, issues } = parsePack(body);
  if (!pack) return { problem: 'pack', issues };
  const forbidden = iJsonIssue(body);
  if (forbidden) return { problem: 'i-json', issues: [forbidden] };
  if (!isCanonical(body)) return refuse('not-canonical');
  const { id, edition } = pack.about;
  const { founder } = splitId(id);
  if (founder === null || !(await leadsFromFounder(id, seal.history, seal.key, edition))) return refuse('key-history');
  return {
    ...{ pack, json: body, hash: await contentHash(body), key: seal.key, fingerprint: await fingerprintOf(seal.key) },
    ...{
      founder,
      edition,
      history: seal.history,
      expires: lastDay(pack.about, seal.expires ?? null),
      next: seal.next ?? null,
    },
    previous: seal.previous ?? null,
  };
}

function refuse(problem: Exclude<SealProblem, 'pack' | 'i-json'>): Opening {
  return { problem, issues: [{ path: '', ...texts.problems[problem] }] };
}
