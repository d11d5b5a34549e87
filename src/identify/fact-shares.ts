import type { FactKnown } from '../pack/knowledge';
import { CONVERTED_SHARE, FIRM_SHARE, USUAL_SHARE } from './assumptions';
import type { Leaves } from './leaves';

/** A fact with the chance that its condition holds: 1 where it has none. */
export interface WeighedFact {
  fact: FactKnown;
  share: number;
}

/**
 * How likely each leaf is under these facts, as shares of one whole. A set of values is shared evenly; nothing known
 * is every leaf alike; facts under a condition take their share, and the general ones what is left.
 */
export function factShares(facts: readonly WeighedFact[], leaves: Leaves): Float64Array {
  const count = leaves.values.length;
  const out = new Float64Array(count);
  const general = facts.filter(({ fact }) => fact.when === null);
  const conditional = facts.filter(({ fact, share }) => fact.when !== null && share > 0);
  const asked = conditional.reduce((sum, one) => sum + one.share, 0);
  const scale = asked > 1 ? 1 / asked : 1;
  for (const { fact, share } of conditional) addFact(out, fact, share * scale, leaves);
  const left = Math.max(0, 1 - asked * scale);
  if (general.length === 0) for (let i = 0; i < count; i++) out[i]! += left / count;
  for (const { fact } of general) addFact(out, fact, left / general.length, leaves);
  return out;
}

function addFact(out: Float64Array, { allowed, always }: FactKnown, weight: number, leaves: Leaves): void {
  const count = out.length;
  const inside = new Set<number>();
  const said = allowed.kind === 'values' ? [...allowed.values] : allowed.kind === 'yes-no' ? [allowed.value] : [];
  for (const value of said) for (const position of leaves.covers.get(value) ?? []) inside.add(position);
  const outside = count - inside.size;
  if (inside.size === 0 || outside === 0) {
    for (let i = 0; i < count; i++) out[i]! += weight / count;
    return;
  }
  const firm = leaves.changeable ? 1 - CONVERTED_SHARE : always ? FIRM_SHARE : USUAL_SHARE;
  for (let i = 0; i < count; i++) out[i]! += weight * (inside.has(i) ? firm / inside.size : (1 - firm) / outside);
}
