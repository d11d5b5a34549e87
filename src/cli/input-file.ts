import { readFileSync, statSync } from 'node:fs';
import { cli as texts } from '../text/catalogue/cli';
import { BadInput } from './bad-input';

/** No page, draft or pack of any use is larger; and a string could not hold much more. */
const MOST_BYTES = 100_000_000;

/** The bytes of a file that the user named. @throws BadInput that says why not. */
export function readBytes(path: string): Buffer {
  try {
    const stats = statSync(path);
    if (stats.isDirectory()) throw new BadInput(texts.bad.folder(path));
    if (stats.size > MOST_BYTES) throw new BadInput(texts.bad.tooLarge(path));
    return readFileSync(path);
  } catch (error) {
    if (error instanceof BadInput) throw error;
    const code = (error as NodeJS.ErrnoException).code ?? String(error);
    if (code === 'ENOENT' || code === 'ENOTDIR') throw new BadInput(texts.bad.noFile(path));
    if (code === 'EACCES' || code === 'EPERM') throw new BadInput(texts.bad.notAllowed(path));
    throw new BadInput(texts.bad.unreadable(path, code));
  }
}

/** The text of a UTF-8 file. @throws BadInput. */
export function readText(path: string): string {
  const bytes = readBytes(path);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new BadInput(texts.bad.notText(path));
  }
}
