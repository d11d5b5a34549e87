import type { MeasureClaim, Reading } from '../claims/reading';
import type { FactKnown } from '../pack/knowledge';
import { SCALE } from './assumptions';
import type { Field } from './field';

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
export function measureLogs(reading: Reading, field: Field): Map<string, Float64Array> {
  const out = new Map<string, Float64Array>();
  const byAttribute = new Map<string, MeasureClaim[]>();
  for (const claim of reading.measures) {
    // "Over 10 kg" is true of nearly all.
    if (claim.subject !== 'this' || claim.stance !== 'says' || claim.bound) continue;
    byAttribute.set(claim.attribute.ref, [...(byAttribute.get(claim.attribute.ref) ?? []), claim]);
  }
  for (const [ref, claims] of byAttribute) {
    const ranges = rangesOf(field, ref);
    const extent = extentOf(ranges, claims);
    // Several readings of one thing say much the same: they are weighed alike, none counts twice.
    const logOf = (range: Extent | null): number =>
      Math.log(claims.reduce((sum, claim) => sum + density(claim, range, extent), 0) / claims.length);
    out.set(ref, Float64Array.from(ranges, logOf));
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

const kept = new WeakMap<Field, Map<string, (Extent | null)[]>>();

/** For each hypothesis all that its facts allow, gaps between them left out; null where nothing, or no end, is known. */
export function rangesOf(field: Field, ref: string): (Extent | null)[] {
  const ranges = kept.get(field) ?? new Map<string, (Extent | null)[]>();
  kept.set(field, ranges);
  const made =
    ranges.get(ref) ?? field.hypotheses.map(({ model }) => (model ? spanOf(model.facts.get(ref) ?? []) : null));
  ranges.set(ref, made);
  return made;
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

function extentOf(ranges: readonly (Extent | null)[], claims: readonly MeasureClaim[]): Extent {
  let from = Math.min(...claims.map((claim) => claim.low));
  let to = Math.max(...claims.map((claim) => claim.high));
  for (const range of ranges) {
    if (!range) continue;
    from = Math.min(from, range.from);
    to = Math.max(to, range.to);
  }
  // Half as much again on both sides: the known ones aren't the smallest and the largest there are.
  const wider = Math.max((to - from) / 2, to * 0.1, 1e-6);
  return { from: from - wider, to: to + wider };
}
