import { EFFORT, LEAST_BITS, LEAST_CHANGE, PRUNED_MASS, SETTLED, TRUST } from './assumptions';
import type { Answers, AttributeEvidence } from './evidence';
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

/**
 * What to find out next, the most information per effort first: of every attribute that the viewer hasn't answered the
 * mutual information between what an eye would say of it and which one it is. What the seller has claimed already counts
 * as far as he is to be trusted. Hypotheses that together hold less than PRUNED_MASS are left out of the sums.
 */
export function nextEvidence(identified: Identified, answers: Answers, most: number): Telling[] {
  const { evidence, posterior, order } = identified;
  const kept = worthwhile(order, posterior.shares);
  const whole = kept.reduce((sum, h) => sum + posterior.shares[h]!, 0);
  const shares = Float64Array.from(kept, (h) => posterior.shares[h]! / whole);
  const isSettled = (shares[0] ?? 1) > SETTLED;
  const known = new Map(evidence.attributes.map((one) => [one.attribute, one]));
  const out: Telling[] = [];
  for (const [ref, leaves] of evidence.field.tables.attributes) {
    if (Object.hasOwn(answers, ref)) continue;
    const chances = answerChances(identified, kept, leaves, known.get(ref));
    const count = leaves.values.length;
    const bits = expectedInformation(shares, chances, count);
    const changes = changeOfMind(shares, chances, count);
    const effort = leaves.attribute.def.effort ?? 'photo';
    if (isSettled ? changes >= LEAST_CHANGE : bits >= LEAST_BITS) out.push({ leaves, effort, bits, changes });
  }
  const worth = (one: Telling): number => one.bits / EFFORT[one.effort];
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

/**
 * For each hypothesis how likely an eye says each leaf. The very machine's value is what the facts allow, weighed by
 * the seller's words where they were of this machine and not copied from another's list.
 */
function answerChances(
  { evidence: { field, numbered }, posterior: { copied } }: Identified,
  kept: readonly number[],
  leaves: Leaves,
  known: AttributeEvidence | undefined,
): Float64Array {
  const ref = leaves.attribute.ref;
  const count = leaves.values.length;
  const table = field.tables.of(ref);
  const eye = leaves.attribute.def.trust?.eye ?? TRUST.eye;
  const wrong = count > 1 ? (1 - eye) / (count - 1) : 0;
  const right = count > 1 ? eye : 1;
  const claimed = known?.claimed ?? null;
  const out = new Float64Array(kept.length * count);
  kept.forEach((h, position) => {
    const { model } = field.hypotheses[h]!;
    const run = model && numbered.get(model.ref);
    const row = run ? field.tables.numbered(ref, model, run) : table.subarray(h * count, (h + 1) * count);
    let whole = 0;
    for (let leaf = 0; leaf < count; leaf++) whole += row[leaf]! * (claimed ? claimed[leaf]! : 1);
    for (let leaf = 0; leaf < count; leaf++) {
      const described = claimed && whole > 0 ? (row[leaf]! * claimed[leaf]!) / whole : row[leaf]!;
      const share = copied[h]! * row[leaf]! + (1 - copied[h]!) * described;
      // sum over true leaves of P(leaf) P(says v | leaf) = wrong + P(v) (right - wrong)
      out[position * count + leaf] = wrong + share * (right - wrong);
    }
  });
  return out;
}

/** How likely are the answers after which the first of the shares isn't the largest any more? */
function changeOfMind(shares: Float64Array, chances: Float64Array, count: number): number {
  let changes = 0;
  for (let v = 0; v < count; v++) {
    let overall = 0;
    let most = 0;
    for (let c = 0; c < shares.length; c++) {
      const joint = shares[c]! * chances[c * count + v]!;
      overall += joint;
      most = Math.max(most, joint);
    }
    if (most > shares[0]! * chances[v]!) changes += overall;
  }
  return changes;
}
