import type { FactKnown, ModelKnown } from '../pack/knowledge';
import type { When } from '../pack/schema/models';
import { numberInTable } from '../pack/serial-form';
import type { Run } from '../pack/serials/run';

/** What is known of when, where and under which number this very machine was made. */
export interface Conditions {
  years: { from: number; to: number } | null;
  place: string | null;
  serial: { scheme: string; number: number; run: Run } | null;
}

/**
 * The facts that hold for this machine. Those whose condition surely holds speak alone; where it may hold they stand
 * beside the general ones, and a claim must be refuted by all of them. `whole` is false where only conditional facts
 * are known and none surely holds: then nothing is known outside their conditions, and nobody outside is accused.
 */
export function factsInForce(
  model: ModelKnown,
  attribute: string,
  conditions: Conditions,
): { facts: FactKnown[]; whole: boolean } {
  const all = model.facts.get(attribute) ?? [];
  const general = all.filter((fact) => fact.when === null);
  const conditional = all.flatMap((fact) =>
    fact.when ? [{ fact, holds: holds(fact.when, fact.pack, conditions) }] : [],
  );
  const sure = conditional.filter((one) => one.holds === 'yes').map((one) => one.fact);
  if (sure.length > 0) return { facts: sure, whole: true };
  const possible = conditional.filter((one) => one.holds === 'maybe').map((one) => one.fact);
  return { facts: [...general, ...possible], whole: general.length > 0 };
}

function holds(when: When, pack: string, conditions: Conditions): 'yes' | 'no' | 'maybe' {
  const parts: ('yes' | 'no' | 'maybe')[] = [];
  if (when.made) parts.push(inYears(when.made, conditions.years));
  if (when.places) {
    const places = when.places.map((place) => place.toLowerCase());
    parts.push(conditions.place === null ? 'maybe' : places.includes(conditions.place.toLowerCase()) ? 'yes' : 'no');
  }
  if (when.serials) parts.push(inSerials(when.serials, pack, conditions.serial));
  if (parts.includes('no')) return 'no';
  return parts.includes('maybe') ? 'maybe' : 'yes';
}

function inYears(
  span: { from?: number | undefined; to?: number | undefined },
  years: Conditions['years'],
): 'yes' | 'no' | 'maybe' {
  if (!years) return 'maybe';
  const from = span.from ?? Number.NEGATIVE_INFINITY;
  const to = span.to ?? Number.POSITIVE_INFINITY;
  if (years.to < from || years.from > to) return 'no';
  return years.from >= from && years.to <= to ? 'yes' : 'maybe';
}

function inSerials(
  ranges: NonNullable<When['serials']>,
  pack: string,
  serial: Conditions['serial'],
): 'yes' | 'no' | 'maybe' {
  if (!serial) return 'maybe';
  const inside = ranges.some((range) => {
    if (range.scheme !== serial.scheme || pack !== serial.run.pack) return false;
    const first = numberInTable(serial.run.scheme, range.first);
    const last = numberInTable(serial.run.scheme, range.last);
    return first !== null && last !== null && serial.number >= first && serial.number <= last;
  });
  return inside ? 'yes' : 'no';
}
