import { parsePack } from '../../engine';
import type { PackIssue } from '../../pack/issues';
import type { Pack } from '../../pack/schema/index';
import { iJsonIssue } from '../../sharing/seal/i-json-issue';
import { isSealed } from '../../sharing/seal/is-sealed';
import { openSealed } from '../../sharing/seal/open-seal';
import { cli } from '../../text/catalogue/cli';
import { packCliTexts as texts } from '../../text/catalogue/pack-cli';
import { BadInput } from '../bad-input';
import { readText } from '../input-file';
import { printable } from '../printable';

/** `pack check`: every issue of every file, one line each. @throws BadInput at the end where a file has any */
export async function checkCommand(files: string[]): Promise<string> {
  if (files.length === 0) throw new BadInput(cli.bad.noInput(texts.usage));
  const lines: string[] = [];
  let bad = 0;
  for (const file of files) {
    const read = await check(readText(file));
    if (Array.isArray(read)) {
      bad += 1;
      for (const { path, what, expected } of read) lines.push(cli.pack.issue(file, path, what, expected));
    } else {
      const models = (read.models?.length ?? 0) + (read.types?.length ?? 0);
      const runs = read.serials?.runs.first.length ?? 0;
      lines.push(cli.pack.good(file, read.about.id, read.about.edition, models, runs));
    }
  }
  const text = lines.map((line) => `${printable(line)}\n`).join('');
  if (bad === 0) return text;
  process.stdout.write(text);
  throw new BadInput(cli.pack.badFiles(bad, files.length));
}

async function check(text: string): Promise<Pack | PackIssue[]> {
  if (isSealed(text)) {
    const opened = await openSealed(text);
    return opened.issues ?? opened.pack;
  }
  const { pack, issues } = parsePack(text);
  if (!pack) return issues;
  // What JSON readers take without a word, each in its own way, and no seal can hold.
  const forbidden = iJsonIssue(text);
  return forbidden ? [forbidden] : pack;
}
