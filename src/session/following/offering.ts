import type { KeptKnown, KeptOffer } from '../../keep/schema';
import { contentHash } from '../../pack/compiled/content-hash';
import type { PackIssue } from '../../pack/issues';
import { localText } from '../../pack/local-text';
import type { Pack } from '../../pack/schema/index';
import { type OpenedPack, openPackFile } from '../../sharing/open-file';
import { diffPacks } from '../../sharing/propose/diff-packs';
import { applyUpdate } from '../../sharing/propose/update-file';
import type { Fetched } from '../../sharing/subscribe/fetch-capped';
import { addressBeside, LARGEST_NOTICE, type Notice, type PublishedFile } from '../../sharing/subscribe/notice';
import { judgeTexts } from '../../text/catalogue/judged';
import { tellChanges } from '../change-told';
import type { Stood } from '../install';
import { handedOver, judged } from '../judged';
import { noticeIn } from './finding';
import type { OfferProblem, OfferStep, OfferTold } from './offer-told';

/** Bytes; the same that a chosen file may have. */
const LARGEST_PACK = 100_000_000;

/** The text of the pack that stands on the shelf under an id. */
export interface Here {
  edition: number;
  json: string;
  hash: string;
}

export interface OfferReach {
  fetchText(address: string, most: number, progress: (bytes: number) => void): Promise<Fetched>;
  /** What stands there now, or null. */
  here(id: string): Promise<Here | null>;
  stood: Stood;
  tell(step: OfferStep): void;
}

/** An edition that can be taken, and what is shown of it; or why there is none. */
export type Offering =
  | { state: 'offered'; offer: KeptOffer; told: OfferTold }
  | { state: 'nothing-new'; edition: number }
  | { state: 'failed'; problem: OfferProblem }
  | { state: 'refused'; issues: PackIssue[] };

/**
 * Looks at what an address publishes: its notice, the edition that it names (by a small update where there is one for
 * what stands here, else as a whole), its seal, and whether it may take the place of what is known. Keeps nothing.
 * @param followed the id of the pack that is followed there already; null: the user looks for the first time
 */
export async function offering(address: string, followed: string | null, reach: OfferReach): Promise<Offering> {
  const fetched = await reach.fetchText(address, LARGEST_NOTICE, () => {});
  if (!fetched.ok) return { state: 'failed', problem: fetched.problem };
  const notice = noticeIn(fetched.text);
  if (notice === 'no-notice') return { state: 'failed', problem: notice };
  if (followed !== null && notice.pack !== followed) return { state: 'failed', problem: 'other-pack' };
  if (reach.stood.shelf.some(({ id, shipped }) => shipped && id === notice.pack))
    return { state: 'failed', problem: 'is-shipped' };
  const known = reach.stood.known.get(notice.pack) ?? null;
  const here = await reach.here(notice.pack);
  if (notice.edition < Math.max(known?.edition ?? 0, here?.edition ?? 0)) return { state: 'failed', problem: 'older' };
  const got = await editionNamed(address, notice, here, reach);
  if ('problem' in got) return { state: 'failed', problem: got.problem };
  reach.tell({ state: 'checking' });
  const opened = await openPackFile(got.text);
  if (!opened.pack) return { state: 'refused', issues: opened.issues };
  const { id, edition } = opened.pack.about;
  if (id !== notice.pack || edition !== notice.edition) return { state: 'failed', problem: 'not-as-said' };
  return offered(opened, { address, notice, here, known, bytes: got.bytes }, followed, reach);
}

interface Got {
  text: string;
  /** How many were fetched for it. */
  bytes: number;
}

async function editionNamed(
  address: string,
  notice: Notice,
  here: Here | null,
  reach: OfferReach,
): Promise<Got | { problem: OfferProblem }> {
  const update = notice.changes.find(({ from }) => from === here?.edition)?.file;
  const small = here && update ? await byUpdate(address, notice, here, update, reach) : null;
  return small ?? named(address, notice.file, 'pack', LARGEST_PACK, reach);
}

/** By the small update; null where that doesn't lead there, whatever the reason. */
async function byUpdate(
  address: string,
  { file }: Notice,
  here: Here,
  update: PublishedFile,
  reach: OfferReach,
): Promise<Got | null> {
  if (update.bytes >= file.bytes) return null;
  const got = await named(address, update, 'changes', LARGEST_PACK, reach);
  if ('problem' in got) return null;
  reach.tell({ state: 'checking' });
  const made = applyUpdate(got.text, here);
  if (made.problem) return null;
  // The very file that is named, or nothing.
  const isNamed = (await contentHash(made.sealed)) === file.sha256;
  return isNamed ? { text: made.sealed, bytes: got.bytes } : null;
}

/** A file by its hash: no more bytes than are said, and those. */
async function named(
  address: string,
  file: PublishedFile,
  kind: 'pack' | 'changes',
  most: number,
  { fetchText, tell }: OfferReach,
): Promise<Got | { problem: OfferProblem }> {
  if (file.bytes > most) return { problem: 'too-large' };
  const all = file.bytes;
  tell({ state: 'fetching', done: 0, all });
  const fetched = await fetchText(addressBeside(address, file, kind), all, (done) =>
    tell({ state: 'fetching', done, all }),
  );
  if (!fetched.ok) return { problem: fetched.problem };
  return (await contentHash(fetched.text)) === file.sha256 ? fetched : { problem: 'other-bytes' };
}

interface Found {
  address: string;
  notice: Notice;
  here: Here | null;
  known: KeptKnown | null;
  bytes: number;
}

async function offered(
  opened: Extract<OpenedPack, { json: string }>,
  { address, notice, here, known, bytes }: Found,
  followed: string | null,
  { stood }: OfferReach,
): Promise<Offering> {
  const { pack, json, sealedBy, seal, expires } = opened;
  const { id, edition, title, language, licence } = pack.about;
  const judgement = await judged(opened, stood.known);
  const { verdict, reason, remember } = judgement;
  if (verdict === 'rollback') return { state: 'failed', problem: 'older' };
  if (verdict === 'fork') return refused(judgeTexts.fork(edition, known?.edition ?? edition));
  if (reason) return refused(judgeTexts.refused[reason]);
  const hash = seal?.hash ?? (await contentHash(json));
  const isHere = here?.hash === hash;
  if (isHere && followed !== null) return { state: 'nothing-new', edition };
  // Nothing proves of an unsealed pack who has changed it, so that two texts under one number are told as what they are.
  const otherText = here?.edition === edition && !isHere;
  const before = here ? (JSON.parse(here.json) as Pack) : null;
  const about = {
    id,
    edition,
    title: localText(title, language),
    language,
    licence,
    sealedBy,
    demo: pack.about.demo === true,
  };
  return {
    state: 'offered',
    offer: {
      ...{ id, text: json, judgedAgainst: known, remember, replaces: here?.hash ?? null },
      pack: { id, edition, installedAt: '', sealedBy, hash, expires },
      subscription: { address, sha256: notice.file.sha256 },
    },
    told: {
      ...{ about, hash, address, here: here?.edition ?? null, isHere, otherText },
      ...{ bytes: { fetched: bytes, whole: notice.file.bytes }, expires },
      keepers: pack.about.keepers?.map(({ name }) => name) ?? [],
      handedOver: await handedOver(judgement.changes),
      changes: before && !isHere ? tellChanges(diffPacks(before, pack), before, pack) : null,
      holds: { models: pack.models?.length ?? 0, runs: pack.serials?.runs.first.length ?? 0 },
    },
  };
}

function refused(issue: { what: string; expected: string }): Offering {
  return { state: 'refused', issues: [{ path: '', ...issue }] };
}
