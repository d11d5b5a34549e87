import type { KeptKnown } from '../keep/schema';
import { fingerprintOf, spokenFingerprint } from '../sharing/seal/fingerprint';
import { splitId } from '../sharing/seal/pack-id';

/** What is remembered of a sealed pack whose file is not here, as plain data to be shown. */
export interface RememberedTold {
  id: string;
  /** Its id without the founding key's fingerprint: its title went with its file. */
  name: string;
  /** The highest edition that was here. */
  edition: number;
  /** The key that sealed that, as it is read aloud. */
  sealedBy: string;
}

/** @param here ids of the packs that are on the shelf: what is remembered of these is not told */
export function rememberedTold(
  known: ReadonlyMap<string, KeptKnown>,
  here: ReadonlySet<string>,
): Promise<RememberedTold[]> {
  const gone = [...known.values()].filter(({ id }) => !here.has(id));
  return Promise.all(
    gone.map(async ({ id, key, edition }) => {
      return { id, name: splitId(id).name, edition, sealedBy: spokenFingerprint(await fingerprintOf(key)) };
    }),
  );
}
