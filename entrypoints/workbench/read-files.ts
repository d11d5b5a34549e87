import type { ChosenFile, Refused } from '../../src/session/install';
import { workbenchTexts } from '../../src/text/catalogue/workbench';

const texts = workbenchTexts.install;

/** A pack with a million runs has about 60 MB. */
const LARGEST = 200_000_000;

/** The texts of chosen files. One that isn't UTF-8 is refused rather than read with holes in it. */
export async function readFiles(files: readonly File[]): Promise<{ chosen: ChosenFile[]; unreadable: Refused[] }> {
  const chosen: ChosenFile[] = [];
  const unreadable: Refused[] = [];
  for (const file of files) {
    const refuse = (what: string) =>
      unreadable.push({ file: file.name, issues: [{ path: '', what, expected: texts.readable }] });
    if (file.size > LARGEST) {
      refuse(texts.tooLarge(Math.ceil(file.size / 1e6)));
      continue;
    }
    try {
      const text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(await file.arrayBuffer());
      chosen.push({ name: file.name, text });
    } catch {
      refuse(texts.unreadable);
    }
  }
  return { chosen, unreadable };
}
