import { readDraft } from '../listing/draft';
import { parseDrafts } from '../listing/parse-drafts';
import type { Listing } from '../listing/types';
import { cli as texts } from '../text/catalogue/cli';
import { BadInput } from './bad-input';
import { readText } from './input-file';

export interface LoadedDrafts {
  /** The file held a list, be it of one. */
  list: boolean;
  /** In the file's order; `id` is null where the draft has none. */
  drafts: { id: string | null; listing: Listing }[];
}

/** The drafts of a file. @throws BadInput that says what is wrong where. */
export function loadDrafts(path: string): LoadedDrafts {
  const text = readText(path);
  const drafts = parseDrafts(text);
  if (typeof drafts === 'string') throw new BadInput(texts.bad.draft(path, drafts));
  return {
    list: text.trimStart().startsWith('['),
    drafts: drafts.map((draft) => ({ id: draft.id ?? null, listing: readDraft(draft) })),
  };
}
