import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { contentHash } from '../../pack/compiled/content-hash';
import type { Pack } from '../../pack/schema/index';
import { judge } from '../../sharing/seal/judge';
import { openSealed } from '../../sharing/seal/open-seal';
import { readNotice } from '../../sharing/subscribe/notice';
import { noticeName, publication } from '../../sharing/subscribe/publication';
import { packCliTexts as texts } from '../../text/catalogue/pack-cli';
import { BadInput } from '../bad-input';
import { readText } from '../input-file';
import { folderFor, writeOutput } from '../output-file';
import { readSealed } from '../sealed-file';
import { needed, one, type PackValues } from './pack-options';
import { refusal } from './pack-verify';

/**
 * `pack publish`: a folder that a plain web host can serve as it is. Files of packs and updates are named by their hash,
 * so none of them is ever written over; the notice alone changes, and is written last.
 */
export async function publishCommand(files: string[], values: PackValues): Promise<string> {
  const path = one('publish', files);
  const folder = folderFor(needed(values, 'folder'));
  const { text, ...opened } = await readSealed(path);
  const { id } = opened.pack.about;
  const noticePath = join(folder, noticeName(id));
  const before = existsSync(noticePath) ? await published(noticePath, folder, id) : null;
  if (before) {
    const judgement = await judge((await judge(null, before)).remember, opened);
    if (!judgement.accepted) throw new BadInput(refusal(path, judgement, opened.edition, before.edition));
    if (judgement.verdict === 'same') return `${texts.publishedAlready(folder, opened.edition)}\n`;
  }
  const earlier = await earlierEditions(folder, id, opened.edition);
  const lines = [texts.published(folder, opened.edition, before?.edition ?? null)];
  for (const file of await publication(text, earlier)) {
    const at = join(folder, file.name);
    const isNotice = at === noticePath;
    // A file of that name is that file, unless somebody has put another one there.
    if (!isNotice && existsSync(at) && (await contentHash(readText(at))) === file.name.slice(0, 64)) continue;
    writeOutput(at, file.text, isNotice);
    lines.push(texts.wroteFile(file.name, Buffer.byteLength(file.text)));
  }
  return `${lines.join('\n')}\n`;
}

/** The edition that a notice names, from the file beside it. */
async function published(noticePath: string, folder: string, id: string) {
  const notice = readNotice(readText(noticePath));
  if (notice?.pack !== id) throw new BadInput(texts.otherNotice(noticePath));
  const file = join(folder, `${notice.file.sha256}.pack`);
  if (!existsSync(file)) throw new BadInput(texts.lostFile(noticePath));
  return readSealed(file);
}

/** Earlier editions of the pack that lie in the folder, the newest first: their readers get a small update. */
async function earlierEditions(folder: string, id: string, edition: number): Promise<Pack[]> {
  const packs: Pack[] = [];
  for (const name of readdirSync(folder)) {
    if (!/^[0-9a-f]{64}\.pack$/.test(name)) continue;
    const opened = await openSealed(readText(join(folder, name)));
    if (!opened.issues && opened.pack.about.id === id && opened.edition < edition) packs.push(opened.pack);
  }
  return packs.sort((a, b) => b.about.edition - a.about.edition);
}
