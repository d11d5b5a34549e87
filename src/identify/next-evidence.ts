import { answerChances } from './answer-chances';
import { EFFORT, LEAST_BITS, LEAST_CHANGE, PRUNED_MASS, SETTLED } from './assumptions';
import type { Answers } from './evidence';
import type { Identified } from './identify';
import { expectedInformation } from './information';
import type { Leaves } from './leaves';

export type Effort = keyof typeof EFFORT;

/** One thing that could be found out, and how much it is expected to tell of which one it is. */
export interface Telling {
  leaves: Leaves;
  effort: Effort;
  /** Expected information, in bits. */
  bits: number;
  /** How likely it is that the answer makes another one the likeliest. */
  changes: number;
}

export interface NextOptions {
  atHand?: boolean | undefined;
  anyway?: boolean;
  told?: ReadonlySet<string>;
}

/**
 * What to find out next, the most information per effort first: of every attribute that the viewer hasn't answered the
 * mutual information between what an eye would say of it and which one it is. What the seller has claimed already counts
 * as far as he is to be trusted. Hypotheses that together hold less than PRUNED_MASS are left out of the sums.
 * @param atHand the thing stands before whoever answers: then looking at one place is as easy as at another
 * @param anyway also what would tell next to nothing: somebody stands there and may as well look
 * @param told refs of attributes that need no question, because it is said and nobody errs there
 */
export function nextEvidence(
  identified: Identified,
  answers: Answers,
  most: number,
  { atHand = false, anyway = false, told = new Set() }: NextOptions = {},
): Telling[] {
  const { evidence, posterior, order } = identified;
  const kept = worthwhile(order, posterior.shares);
  const isSettled = posterior.shares[order[0]!]! > SETTLED;
  const out: Telling[] = [];
  for (const [ref, leaves] of evidence.field.tables.attributes) {
    if (Object.hasOwn(answers, ref) || told.has(ref)) continue;
    const count = leaves.values.length;
    const { shares, largest, chances } = answerChances(identified, kept, leaves);
    const bits = expectedInformation(shares, chances, count);
    const changes = changeOfMind(shares, largest, chances, count);
    const effort = leaves.attribute.def.effort ?? 'photo';
    if (anyway || (isSettled ? changes >= LEAST_CHANGE : bits >= LEAST_BITS))
      out.push({ leaves, effort, bits, changes });
  }
  const worth = (one: Telling): number => one.bits / (atHand ? 1 : EFFORT[one.effort]);
  return out.sort((a, b) => worth(b) - worth(a)).slice(0, most);
}

function worthwhile(order: readonly number[], shares: Float64Array): number[] {
  let mass = 0;
  const end = order.findIndex((h) => {
    if (mass >= 1 - PRUNED_MASS) return true;
    mass += shares[h]!;
    return false;
  });
  return end < 0 ? [...order] : order.slice(0, end);
}

/** How likely are the answers after which the likeliest of all, which is of the first group, is that no more? */
function changeOfMind(shares: Float64Array, largest: Float64Array, chances: Float64Array, count: number): number {
  let changes = 0;
  for (let v = 0; v < count; v++) {
    let overall = 0;
    let most = 0;
    for (let g = 0; g < shares.length; g++) {
      overall += shares[g]! * chances[g * count + v]!;
      most = Math.max(most, largest[g]! * chances[g * count + v]!);
    }
    if (most > largest[0]! * chances[v]!) changes += overall;
  }
  return changes;
}
