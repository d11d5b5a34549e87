import { contentHash } from '../../pack/compiled/content-hash';
import type { Pack } from '../../pack/schema/index';
import { writeUpdate } from '../propose/update-file';
import { splitId } from '../seal/pack-id';
import { MOST_CHANGES, type Notice, type PublishedFile } from './notice';

/** A file to be put on the host. */
export interface FileToPublish {
  name: string;
  text: string;
}

/** An update as large as this share of the whole file saves nobody anything. */
const WORTH_IT = 0.5;

/**
 * All that a keeper puts on a host for one edition, the notice last: whoever comes while the files are being put there
 * finds everything that the notice names. Files of earlier editions may stay or go.
 * @param sealed the edition's file; @param before earlier editions whose subscribers get a small update, the newest first
 */
export async function publication(sealed: string, before: readonly Pack[]): Promise<FileToPublish[]> {
  const { about } = JSON.parse(sealed.slice(sealed.indexOf('\n') + 1)) as Pack;
  const file = await published(sealed);
  const files: FileToPublish[] = [{ name: `${file.sha256}.pack`, text: sealed }];
  const changes: Notice['changes'] = [];
  for (const earlier of before.slice(0, MOST_CHANGES)) {
    const text = await writeUpdate(earlier, sealed);
    const update = await published(text);
    if (update.bytes > file.bytes * WORTH_IT) continue;
    files.push({ name: `${update.sha256}.changes`, text });
    changes.push({ from: earlier.about.edition, file: update });
  }
  const notice: Notice = { notice: 1, pack: about.id, edition: about.edition, file, changes };
  return [...files, { name: noticeName(about.id), text: `${JSON.stringify(notice)}\n` }];
}

/** What a pack's notice is called, for as long as the pack is published. */
export function noticeName(id: string): string {
  return `${splitId(id).name}.notice.json`;
}

async function published(text: string): Promise<PublishedFile> {
  return { sha256: await contentHash(text), bytes: new TextEncoder().encode(text).byteLength };
}
