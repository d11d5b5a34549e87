import type { MeasureClaim, Reading } from '../claims/reading';
import type { FactKnown, ModelKnown } from '../pack/knowledge';
import { SCALE } from './assumptions';
import type { Hypothesis } from './field';

/** Where an attribute's values lie over all that is known: what nothing is known of may be anywhere in it. */
interface Extent {
  from: number;
  to: number;
}

/**
 * What stated weights and lengths say of each hypothesis, per attribute: natural logarithms of densities. A reading
 * falls evenly into the known range and a scale's slack beside it; with the case on it a weight is more; a wrong one is
 * anywhere.
 */
export function measureLogs(reading: Reading, hypotheses: readonly Hypothesis[]): Map<string, Float64Array> {
  const out = new Map<string, Float64Array>();
  const byAttribute = new Map<string, MeasureClaim[]>();
  for (const claim of reading.measures) {
    if (claim.subject !== 'this' || claim.stance !== 'says') continue;
    byAttribute.set(claim.attribute.ref, [...(byAttribute.get(claim.attribute.ref) ?? []), claim]);
  }
  for (const [ref, claims] of byAttribute) {
    const extent = extentOf(ref, hypotheses, claims);
    out.set(
      ref,
      Float64Array.from(hypotheses, ({ model }) => {
        const range = model && rangeOf(model, ref);
        // Several readings of one thing say much the same: they are weighed alike, none counts twice.
        const chance = claims.reduce((sum, claim) => sum + density(claim, range, extent), 0);
        return Math.log(chance / claims.length);
      }),
    );
  }
  return out;
}

function density(claim: MeasureClaim, range: Extent | null, extent: Extent): number {
  const anywhere = 1 / (extent.to - extent.from);
  if (!range) return anywhere;
  const value = (claim.low + claim.high) / 2;
  const slack = value * (claim.approximate ? SCALE.guessed : SCALE.slack) + (claim.high - claim.low) / 2;
  const allowance = claim.attribute.def.kind === 'measure' ? (claim.attribute.def.allowance ?? 0) : 0;
  const cased = allowance === 0 ? 0 : claim.withMore ? SCALE.casedSaid : SCALE.cased;
  const bare = even(value, range.from - slack, range.to + slack);
  const more = even(value, range.from - slack, range.to + slack + allowance);
  return SCALE.outside * anywhere + (1 - SCALE.outside) * (cased * more + (1 - cased) * bare);
}

function even(value: number, from: number, to: number): number {
  return value >= from && value <= to ? 1 / Math.max(to - from, 1e-9) : 0;
}

/** All ranges that the facts allow, with their gaps; open ends are left to the extent. */
function rangeOf(model: ModelKnown, ref: string): Extent | null {
  return spanOf(model.facts.get(ref) ?? []);
}

function spanOf(facts: readonly FactKnown[]): Extent | null {
  let from = Number.POSITIVE_INFINITY;
  let to = Number.NEGATIVE_INFINITY;
  for (const { allowed } of facts) {
    if (allowed.kind !== 'range') continue;
    if (!Number.isFinite(allowed.from) || !Number.isFinite(allowed.to)) return null;
    from = Math.min(from, allowed.from);
    to = Math.max(to, allowed.to);
  }
  return from <= to ? { from, to } : null;
}

function extentOf(ref: string, hypotheses: readonly Hypothesis[], claims: readonly MeasureClaim[]): Extent {
  let from = Math.min(...claims.map((claim) => claim.low));
  let to = Math.max(...claims.map((claim) => claim.high));
  for (const { model } of hypotheses) {
    const range = model && rangeOf(model, ref);
    if (!range) continue;
    from = Math.min(from, range.from);
    to = Math.max(to, range.to);
  }
  // Half as much again on both sides: the known ones aren't the smallest and the largest there are.
  const wider = Math.max((to - from) / 2, to * 0.1, 1e-6);
  return { from: from - wider, to: to + wider };
}
