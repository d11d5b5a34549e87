import type { KeptKnown } from '../keep/schema';
import type { OpenedPack } from '../sharing/open-file';
import { fingerprintOf, spokenFingerprint } from '../sharing/seal/fingerprint';
import { type Judgement, judge, judgeUnsealed } from '../sharing/seal/judge';
import type { KeyChange } from '../sharing/seal/key-change';

/** May this file take the place of what is known under its id? */
export function judged(
  opened: Extract<OpenedPack, { json: string }>,
  known: ReadonlyMap<string, KeptKnown>,
): Promise<Judgement> | Judgement {
  const { id } = opened.pack.about;
  const there = known.get(id) ?? null;
  return opened.seal ? judge(there, opened.seal) : judgeUnsealed(there, id);
}

/** A key change that both keys have signed: the keys by their fingerprints, as they are read aloud. */
export interface KeyHandedOver {
  edition: number;
  from: string;
  to: string;
}

export function handedOver(changes: readonly KeyChange[]): Promise<KeyHandedOver[]> {
  return Promise.all(
    changes.map(async ({ edition, from, key }) => ({ edition, from: await spoken(from), to: await spoken(key) })),
  );
}

async function spoken(key: string): Promise<string> {
  return spokenFingerprint(await fingerprintOf(key));
}
