import { TRUST } from './assumptions';
import { positionsOf } from './attribute-evidence';
import { heard } from './hearing';
import type { Identified } from './identify';
import type { Leaves } from './leaves';

/** How likely it is that a list was copied is told apart in so many steps, which is finer than it is known. */
const STEPS = 1000;

/** Hypotheses that answer alike, and how likely each answer then is. */
export interface AnswerChances {
  /** Of each group, as shares of one whole; the group of the likeliest hypothesis comes first. */
  shares: Float64Array;
  /** The share of its likeliest member. */
  largest: Float64Array;
  /** The chance of answer v in group g at g * leaves + v. */
  chances: Float64Array;
}

/**
 * How likely an eye says each leaf of an attribute. What the machine has is what the facts allow, weighed by the
 * seller's words where they were of this machine and not copied from another's list; the eye then errs.
 * Hypotheses with the same facts answer alike, unless the seller's words weigh differently with them.
 * @param kept hypotheses, the likeliest first
 */
export function answerChances(identified: Identified, kept: readonly number[], leaves: Leaves): AnswerChances {
  const { evidence, posterior } = identified;
  const ref = leaves.attribute.ref;
  const count = leaves.values.length;
  const known = evidence.attributes.find((one) => one.attribute === ref);
  const { of, shares } =
    known?.rows ?? evidence.field.tables.numbered(ref, positionsOf(evidence.field, evidence.numbered));
  const claimed = known?.claimed ?? null;
  const groups = new Map<number, { share: number; largest: number; row: number; copied: number }>();
  let whole = 0;
  for (const h of kept) {
    const share = posterior.shares[h]!;
    whole += share;
    const row = of[h]!;
    const step = claimed ? Math.round(posterior.copied[h]! * STEPS) : STEPS;
    const key = row * (STEPS + 1) + step;
    const there = groups.get(key);
    if (there) there.share += share;
    else groups.set(key, { share, largest: share, row, copied: step / STEPS });
  }
  const all = [...groups.values()];
  const chances = new Float64Array(all.length * count);
  const eye = leaves.attribute.def.trust?.eye ?? TRUST.eye;
  const seen = leaves.values.map((value) => heard(value, false, eye, leaves)!);
  all.forEach(({ row, copied }, g) => {
    const own = shares.subarray(row * count, (row + 1) * count);
    let agreeing = 0;
    for (let leaf = 0; leaf < count; leaf++) agreeing += own[leaf]! * (claimed ? claimed[leaf]! : 1);
    for (let leaf = 0; leaf < count; leaf++) {
      const described = claimed && agreeing > 0 ? (own[leaf]! * claimed[leaf]!) / agreeing : own[leaf]!;
      const has = copied * own[leaf]! + (1 - copied) * described;
      for (let v = 0; v < count; v++) chances[g * count + v]! += has * seen[v]![leaf]!;
    }
  });
  return {
    shares: Float64Array.from(all, (one) => one.share / whole),
    largest: Float64Array.from(all, (one) => one.largest / whole),
    chances,
  };
}
