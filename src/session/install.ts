import type { KeptKnown } from '../keep/schema';
import type { Trouble } from '../keep/trouble';
import { partsOf } from '../pack/compile/parts-of';
import { contentHash } from '../pack/compiled/content-hash';
import { bytesOf } from '../pack/compiled/write';
import type { PackIssue } from '../pack/issues';
import { localText } from '../pack/local-text';
import type { About } from '../pack/schema/about';
import { type OpenedPack, openPackFile } from '../sharing/open-file';
import type { Judgement } from '../sharing/seal/judge';
import { judgeTexts } from '../text/catalogue/judged';
import { installTexts as texts } from '../text/catalogue/workbench';
import { handedOver, judged, type KeyHandedOver } from './judged';

/** A file that a user chose. Reading it answers its text, or what is wrong with it. */
export interface ChosenFile {
  name: string;
  read: () => Promise<string | PackIssue>;
}

/** What must be known of a pack that stands on the shelf already. */
export interface Standing {
  id: string;
  edition: number;
  shipped: boolean;
  sealedBy: string | null;
  /** SHA-256 of its text, where it has been computed. */
  hash?: string;
}

/** What packs are held against: what stands on the shelf, and what is remembered of those that ever did. */
export interface Stood {
  shelf: readonly Standing[];
  known: ReadonlyMap<string, KeptKnown>;
}

/** A file in order. The pack itself isn't held on to: several large ones parsed at once would fill the memory. */
export interface Accepted {
  file: string;
  id: string;
  title: string;
  edition: number;
  /** The pack as JSON, without its seal. */
  json: string;
  /** What that text is known by, and what was made of it. */
  hash: string;
  compiled: ArrayBuffer;
  sealedBy: string | null;
  /** The last day of this edition, YYYY-MM-DD, or null. */
  expires: string | null;
  /** What is to be remembered of it; null: nothing, for it is unsealed. */
  remember: KeptKnown | null;
  /** What it takes the place of, or null. */
  replaces: Replaced | null;
  /** Key changes that were followed, oldest first. */
  handedOver: KeyHandedOver[];
}

export interface Replaced {
  edition: number;
  /** The text is another one, whatever the edition's number. */
  otherText: boolean;
}

/** An edition earlier than one that was here already: only on purpose. */
export interface Earlier {
  title: string;
  edition: number;
  /** The highest edition that was here. */
  after: number;
}

export interface Refused {
  file: string;
  issues: PackIssue[];
}

/** How far an installation has come: the last four end it. */
export type InstallStep =
  /** Bytes. */
  | { state: 'reading'; file: string; done: number; all: number }
  | { state: 'checking'; file: string }
  | { state: 'keeping' }
  | { state: 'installed'; packs: Installed[] }
  /** All is in order, and nothing is installed: the same again, with leave to go back, does it. */
  | { state: 'going-back'; packs: Earlier[] }
  | { state: 'refused'; refused: Refused[] }
  | { state: 'trouble'; trouble: Trouble | 'memory' };

export type Installed = Pick<Accepted, 'id' | 'title' | 'edition' | 'sealedBy' | 'replaces' | 'handedOver'>;

/** Either every file is accepted or nothing is installed: a half-done installation is hard to take back. */
export type Examined =
  | { accepted: Accepted[]; earlier: Earlier[]; refused?: undefined }
  | { accepted?: undefined; earlier?: undefined; refused: Refused[] };

/**
 * Checks chosen files, one after the other, against each other, against what is on the shelf, and against what is
 * remembered. The packs that came with the program are not replaced by a file of the same id; a sealed one only by the
 * same keeper's; and an earlier edition is told apart, for going back is the user's choice.
 * @param checking told before each file's contents are checked
 */
export async function examine(
  files: readonly ChosenFile[],
  { shelf, known }: Stood,
  checking: (file: string) => void = () => {},
): Promise<Examined> {
  const accepted: Accepted[] = [];
  const earlier: Earlier[] = [];
  const refused: Refused[] = [];
  for (const { name, read } of files) {
    const text = await read();
    if (typeof text !== 'string') {
      refused.push({ file: name, issues: [text] });
      continue;
    }
    checking(name);
    const opened = await openPackFile(text);
    if (!opened.pack) {
      refused.push({ file: name, issues: opened.issues });
      continue;
    }
    const { id, title, edition, language } = opened.pack.about;
    const judgement = await judged(opened, known);
    const issues = [
      ...shelfIssues(opened.pack.about, shelf, accepted),
      ...judgeIssues(judgement, edition, known.get(id)),
    ];
    if (issues.length > 0) {
      refused.push({ file: name, issues });
      continue;
    }
    const there = shelf.find((other) => other.id === id);
    const after = Math.max(there?.edition ?? 0, known.get(id)?.edition ?? 0);
    const titled = localText(title, language);
    if (edition < after) earlier.push({ title: titled, edition, after });
    accepted.push({
      file: name,
      id,
      title: titled,
      ...(await made(opened, there)),
      ...(await rememberedOf(judgement)),
    });
  }
  return refused.length > 0 ? { refused } : { accepted, earlier };
}

type Opened = Extract<OpenedPack, { json: string }>;

async function made({ pack, json, sealedBy, seal, expires }: Opened, there: Standing | undefined) {
  const hash = seal?.hash ?? (await contentHash(json));
  const { buffer: compiled } = bytesOf(partsOf(pack));
  const replaces = there ? { edition: there.edition, otherText: there.hash !== hash } : null;
  return { edition: pack.about.edition, json, hash, compiled, sealedBy, expires, replaces };
}

/** What is known already stays known where the user goes back. */
async function rememberedOf({ remember, changes }: Judgement) {
  return { remember, handedOver: await handedOver(changes) };
}

function shelfIssues(about: About, shelf: readonly Standing[], before: readonly Accepted[]): PackIssue[] {
  const { id } = about;
  const there = shelf.find((other) => other.id === id);
  if (there?.shipped) return [{ path: 'about.id', what: texts.idIsShipped(id), expected: texts.anotherId }];
  if (before.some((other) => other.id === id))
    return [{ path: 'about.id', what: texts.idTwice(id), expected: texts.onePerId }];
  return [];
}

function judgeIssues({ verdict, reason }: Judgement, edition: number, known: KeptKnown | undefined): PackIssue[] {
  if (verdict === 'fork') return [{ path: '', ...judgeTexts.fork(edition, known?.edition ?? edition) }];
  return verdict === 'refused' && reason ? [{ path: '', ...judgeTexts.refused[reason] }] : [];
}
