import type { Pack } from '../../pack/schema/index';
import { type EntryTold, tellChanges } from '../../session/change-told';
import type { Change } from '../../sharing/propose/changes';
import { diffPacks } from '../../sharing/propose/diff-packs';
import { changesTold } from '../../text/catalogue/changes-told';
import { packCliTexts as texts } from '../../text/catalogue/pack-cli';
import { printable, printableJson } from '../printable';
import { readAnyPack } from '../sealed-file';
import { type PackValues, two } from './pack-options';

/** `pack diff`: what differs between two packs, entry by entry. */
export async function diffCommand(files: string[], values: PackValues): Promise<string> {
  const [first, second] = two('diff', files);
  const [before, after] = [await readAnyPack(first), await readAnyPack(second)];
  const changes = diffPacks(before, after);
  return values.json ? `${printableJson(changes, 2)}\n` : printable(diffText(changes, before, after));
}

export function diffText(changes: readonly Change[], before: Pack, after: Pack): string {
  if (changes.length === 0) return `${texts.noDifference}\n`;
  const { entries, more, editions } = { ...tellChanges(changes, before, after), editions: editionsText(before, after) };
  const lines = [...editions, ...entries.flatMap(entryLines)];
  if (more > 0) lines.push(texts.more(more));
  return `${lines.join('\n')}\n`;
}

function editionsText(before: Pack, after: Pack): string[] {
  const [was, is] = [before.about.edition, after.about.edition];
  return was === is ? [] : [texts.editions(was, is)];
}

function entryLines({ kind, part, entry, name, fields }: EntryTold): string[] {
  const what = changesTold.parts[part] ?? part;
  const called = entry === '' ? what : `${what} ${name === entry || name === '' ? entry : `${name} (${entry})`}`;
  return [`${texts.entry[kind]} ${called}`, ...fields.map(({ field, was, now }) => texts.field(field, was, now))];
}
