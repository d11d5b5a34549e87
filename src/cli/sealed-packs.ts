import type { Pack } from '../pack/schema/index';
import { spokenFingerprint } from '../sharing/seal/fingerprint';
import { isSealed } from '../sharing/seal/is-sealed';
import { BadInput } from './bad-input';
import { readText } from './input-file';
import { readSealed } from './sealed-file';

/** Sealed files that a command's `--pack` options name, by path, with their seals proved. */
export type SealedPacks = ReadonlyMap<string, { pack: Pack; sealedBy: string }>;

export const NONE_SEALED: SealedPacks = new Map();

/** The seals of some packs, by pack id, as the engine shows them. */
export function sealsOf(sealed: SealedPacks): ReadonlyMap<string, string> {
  return new Map([...sealed.values()].map(({ pack, sealedBy }) => [pack.about.id, sealedBy]));
}

/**
 * A command that knows the sealed packs it is given: seals are proved before it begins, for that takes turns of the event
 * loop and nothing else in a command does.
 */
export function withSealedPacks(command: (argv: string[], sealed: SealedPacks) => string) {
  return async (argv: string[]): Promise<string> => command(argv, await provedIn(argv));
}

async function provedIn(argv: readonly string[]): Promise<SealedPacks> {
  const proved = new Map<string, { pack: Pack; sealedBy: string }>();
  for (const [i, argument] of argv.entries()) {
    const path = argument === '--pack' ? argv[i + 1] : argument.startsWith('--pack=') ? argument.slice(7) : undefined;
    if (path === undefined || !looksSealed(path)) continue;
    const { pack, fingerprint } = await readSealed(path);
    proved.set(path, { pack, sealedBy: spokenFingerprint(fingerprint) });
  }
  return proved;
}

/** A file that can't be read is the command's to complain of. */
function looksSealed(path: string): boolean {
  try {
    return isSealed(readText(path));
  } catch (error) {
    if (error instanceof BadInput) return false;
    throw error;
  }
}
