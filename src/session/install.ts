import type { PackIssue } from '../pack/issues';
import { parsePack } from '../pack/parse';
import type { Pack } from '../pack/schema/index';
import { installTexts as texts } from '../text/catalogue/workbench';
import type { ShelvedPack } from './packs';

/** A file that a user chose, as text. */
export interface ChosenFile {
  name: string;
  text: string;
}

export interface Accepted {
  file: string;
  pack: Pack;
  text: string;
  /** The edition that it takes the place of, or null. */
  replaces: number | null;
}

export interface Refused {
  file: string;
  issues: PackIssue[];
}

/** Either every file is accepted or nothing is installed: a half-done installation is hard to take back. */
export type Examined = { accepted: Accepted[]; refused?: undefined } | { accepted?: undefined; refused: Refused[] };

/**
 * Checks chosen files against each other and against what is on the shelf. An edition only ever grows, and the packs
 * that came with the program are not replaced by a file of the same id.
 */
export function examine(files: readonly ChosenFile[], shelf: readonly ShelvedPack[]): Examined {
  const accepted: Accepted[] = [];
  const refused: Refused[] = [];
  for (const { name, text } of files) {
    const read = parsePack(text);
    const issues = read.pack ? shelfIssues(read.pack, shelf, accepted) : read.issues;
    if (read.pack && issues.length === 0)
      accepted.push({ file: name, pack: read.pack, text, replaces: editionOf(read.pack.about.id, shelf) });
    else refused.push({ file: name, issues });
  }
  return refused.length > 0 ? { refused } : { accepted };
}

function editionOf(id: string, shelf: readonly ShelvedPack[]): number | null {
  return shelf.find((shelved) => shelved.id === id)?.edition ?? null;
}

function shelfIssues(pack: Pack, shelf: readonly ShelvedPack[], before: readonly Accepted[]): PackIssue[] {
  const { id, edition } = pack.about;
  const there = shelf.find((shelved) => shelved.id === id);
  if (there?.shipped) return [{ path: 'about.id', what: texts.idIsShipped(id), expected: texts.anotherId }];
  if (there && there.edition > edition)
    return [{ path: 'about.edition', what: texts.edition(edition), expected: texts.editionAtLeast(there.edition) }];
  if (before.some((other) => other.pack.about.id === id))
    return [{ path: 'about.id', what: texts.idTwice(id), expected: texts.onePerId }];
  return [];
}
