import { restoreKeys } from '../sharing/seal/keys';
import type { SigningKeys } from '../sharing/seal/signature';
import { packCliTexts as texts } from '../text/catalogue/pack-cli';
import { BadInput } from './bad-input';
import { readText } from './input-file';

/** A passphrase from a file: on a command line everybody on the machine could read it. Its last line break is none of it. */
export function readPassphrase(path: string): string {
  return readText(path).replace(/\r?\n$/, '');
}

/** The keys of a backup file. @throws BadInput */
export async function readKeys(path: string, passphrasePath: string): Promise<SigningKeys> {
  const restored = await restoreKeys(readText(path), readPassphrase(passphrasePath));
  if (restored.problem === 'form') throw new BadInput(texts.notAKey(path));
  if (restored.problem) throw new BadInput(texts.wrongPassphrase(path));
  return restored.keys;
}
