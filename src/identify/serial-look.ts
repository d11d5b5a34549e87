import type { Answers } from './evidence';
import type { Identified } from './identify';
import { expectedInformation } from './information';
import type { SerialSaid } from './serial-likelihood';

/** The key under which it is answered what the number on the machine reads; no attribute's ref is without a "/". */
export const SERIAL_LOOK = 'serial';
/** The answer that it reads as nothing that was offered, or isn't there. Else the answer is what it reads, normalised. */
export const READS_OTHERWISE = 'other';

/** The serial after somebody has looked at it: as seen, as said where nobody could tell, or none. */
export function serialLookedAt(said: SerialSaid | null, answers: Answers): SerialSaid | null {
  const seen = answers[SERIAL_LOOK];
  if (typeof seen !== 'string') return said;
  return seen === READS_OTHERWISE ? null : { normal: seen, stated: true, seen: true };
}

/**
 * How much a photograph of the number is expected to tell of which one it is, in bits: the mutual information of that
 * and whether the number is the machine's own, and rightly read.
 */
export function serialLookBits({ evidence, posterior: { shares } }: Identified): number {
  const { asWritten } = evidence;
  if (!asWritten) return 0;
  const chances = new Float64Array(2 * shares.length);
  asWritten.forEach((own, h) => {
    chances[2 * h] = own;
    chances[2 * h + 1] = 1 - own;
  });
  return expectedInformation(shares, chances, 2);
}
