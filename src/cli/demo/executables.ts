import { accessSync, constants, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';

export type Environment = Record<string, string | undefined>;

/** Where programs of these names would stand on the search path, whether they do or not. */
export function onPath(names: readonly string[], env: Environment, platform: NodeJS.Platform): string[] {
  const folders = (env.PATH ?? env.Path ?? '').split(delimiter).filter(Boolean);
  const ending = platform === 'win32' ? '.exe' : '';
  return names.flatMap((name) => folders.map((folder) => join(folder, name + ending)));
}

export function canRun(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}
