import { parsePack } from '../pack/parse';
import type { Pack } from '../pack/schema/index';
import { isSealed } from '../sharing/seal/is-sealed';
import { type OpenedSeal, openSealed } from '../sharing/seal/open-seal';
import { cli } from '../text/catalogue/cli';
import { packCliTexts as texts } from '../text/catalogue/pack-cli';
import { BadInput } from './bad-input';
import { readText } from './input-file';

/** A sealed file whose seal is sound. @throws BadInput */
export async function readSealed(path: string): Promise<OpenedSeal & { text: string }> {
  const text = readText(path);
  if (!isSealed(text)) throw new BadInput(texts.notSealed(path));
  const opened = await openSealed(text);
  const first = opened.issues?.[0];
  if (opened.issues) throw new BadInput(texts.notOpened(path, first?.what ?? '', first?.expected ?? ''));
  return { ...opened, text };
}

/** A pack, sealed or plain. @throws BadInput */
export async function readAnyPack(path: string): Promise<Pack> {
  const text = readText(path);
  if (isSealed(text)) return (await readSealed(path)).pack;
  const { pack, issues } = parsePack(text);
  if (pack) return pack;
  const first = issues[0] ?? { path: '', what: '', expected: '' };
  throw new BadInput(cli.bad.pack(path, issues.length, first.path, first.what, first.expected));
}
