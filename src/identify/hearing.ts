import { NEVER_SURER } from './assumptions';
import type { Leaves } from './leaves';

/**
 * How likely it is to hear a value of each leaf, from one who is right so often: an error falls on any other leaf
 * alike, and is then told in the words of the value ("round").
 * @param reliable the chance of being right, 0 to 1; nobody is taken to be always right, or always wrong
 * @param denied the value was denied
 * @returns a likelihood per leaf, or null where the value is none of the attribute
 */
export function heard(value: string | boolean, denied: boolean, reliable: number, leaves: Leaves): Float64Array | null {
  const covered = leaves.covers.get(value);
  if (!covered || covered.length === 0) return null;
  const count = leaves.values.length;
  if (count === 1) return new Float64Array(1).fill(1);
  const right = Math.min(NEVER_SURER, Math.max(1 - NEVER_SURER, reliable));
  const wrong = (1 - right) / (count - 1);
  const out = new Float64Array(count);
  for (let leaf = 0; leaf < count; leaf++) {
    const isCovered = covered.includes(leaf);
    const says = isCovered ? right + wrong * (covered.length - 1) : wrong * covered.length;
    out[leaf] = denied ? 1 - says : says;
  }
  return out;
}

/** What is left of a trust where the words are loose or a guess: so much of the way down to chance. */
export function loosened(reliable: number, worth: number, count: number): number {
  return 1 / count + (reliable - 1 / count) * worth;
}
