import { existsSync, mkdirSync, renameSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { cli } from '../text/catalogue/cli';
import { packCliTexts as texts } from '../text/catalogue/pack-cli';
import { BadInput } from './bad-input';

/**
 * Writes a file whole or not at all; what is there already is written over only by the user's word.
 * @param mode who may read it, as the file system has it; @returns whether something was written over. @throws BadInput
 */
export function writeOutput(path: string, text: string, force = false, mode = 0o666): boolean {
  const there = existsSync(path);
  if (there && statSync(path).isDirectory()) throw new BadInput(cli.bad.folder(path));
  if (there && !force) throw new BadInput(texts.thereAlready(path));
  // Beside it, so that giving it its name is one step of the file system.
  const half = join(dirname(path), `.${process.pid}.half`);
  try {
    writeFileSync(half, text, { flag: 'wx', mode });
    renameSync(half, path);
  } catch (error) {
    throw new BadInput(cli.bad.unwritable(path, (error as NodeJS.ErrnoException).code ?? String(error)));
  }
  return there;
}

/** The folder, made where it isn't there. @throws BadInput */
export function folderFor(path: string): string {
  try {
    mkdirSync(path, { recursive: true });
  } catch (error) {
    throw new BadInput(cli.bad.unwritable(path, (error as NodeJS.ErrnoException).code ?? String(error)));
  }
  return path;
}
