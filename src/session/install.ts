import type { Trouble } from '../keep/trouble';
import { partsOf } from '../pack/compile/parts-of';
import { contentHash } from '../pack/compiled/content-hash';
import { bytesOf } from '../pack/compiled/write';
import type { PackIssue } from '../pack/issues';
import { localText } from '../pack/local-text';
import type { About } from '../pack/schema/about';
import { openPackFile } from '../sharing/open-file';
import { installTexts as texts } from '../text/catalogue/workbench';

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
  /** What it takes the place of, or null. */
  replaces: Replaced | null;
}

export interface Replaced {
  edition: number;
  sealedBy: string | null;
}

export interface Refused {
  file: string;
  issues: PackIssue[];
}

/** How far an installation has come: the last three end it. */
export type InstallStep =
  /** Bytes. */
  | { state: 'reading'; file: string; done: number; all: number }
  | { state: 'checking'; file: string }
  | { state: 'keeping' }
  | { state: 'installed'; packs: Installed[] }
  | { state: 'refused'; refused: Refused[] }
  | { state: 'trouble'; trouble: Trouble | 'memory' };

export type Installed = Pick<Accepted, 'id' | 'title' | 'edition' | 'sealedBy' | 'replaces'>;

/** Either every file is accepted or nothing is installed: a half-done installation is hard to take back. */
export type Examined = { accepted: Accepted[]; refused?: undefined } | { accepted?: undefined; refused: Refused[] };

/**
 * Checks chosen files, one after the other, against each other and against what is on the shelf. An edition only ever
 * grows, and the packs that came with the program are not replaced by a file of the same id.
 * @param checking told before each file's contents are checked
 */
export async function examine(
  files: readonly ChosenFile[],
  shelf: readonly Standing[],
  checking: (file: string) => void = () => {},
): Promise<Examined> {
  const accepted: Accepted[] = [];
  const refused: Refused[] = [];
  for (const { name, read } of files) {
    const text = await read();
    if (typeof text !== 'string') {
      refused.push({ file: name, issues: [text] });
      continue;
    }
    checking(name);
    const opened = await openPackFile(text);
    const issues = opened.pack ? shelfIssues(opened.pack.about, shelf, accepted) : opened.issues;
    if (opened.pack && issues.length === 0) {
      const { json, sealedBy } = opened;
      const { id, title, edition, language } = opened.pack.about;
      const there = shelf.find((other) => other.id === id);
      const replaces = there ? { edition: there.edition, sealedBy: there.sealedBy } : null;
      const hash = await contentHash(json);
      const { buffer: compiled } = bytesOf(partsOf(opened.pack));
      const about = { file: name, id, title: localText(title, language), edition, sealedBy, replaces };
      accepted.push({ ...about, json, hash, compiled });
    } else refused.push({ file: name, issues });
  }
  return refused.length > 0 ? { refused } : { accepted };
}

function shelfIssues(about: About, shelf: readonly Standing[], before: readonly Accepted[]): PackIssue[] {
  const { id, edition } = about;
  const there = shelf.find((other) => other.id === id);
  if (there?.shipped) return [{ path: 'about.id', what: texts.idIsShipped(id), expected: texts.anotherId }];
  if (there && there.edition > edition)
    return [{ path: 'about.edition', what: texts.edition(edition), expected: texts.editionAtLeast(there.edition) }];
  if (before.some((other) => other.id === id))
    return [{ path: 'about.id', what: texts.idTwice(id), expected: texts.onePerId }];
  return [];
}
