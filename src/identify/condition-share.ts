import type { FactKnown, ModelKnown } from '../pack/knowledge';
import type { When } from '../pack/schema/models';
import { numberInTable } from '../pack/serial-form';
import type { Run } from '../pack/serials/run';
import { UNKNOWN_CONDITION } from './assumptions';

/** The run of this very machine's number, and its number. */
export interface NumberedIn {
  run: Run;
  number: number;
}

/**
 * How likely a fact's condition holds of a machine of the model: of the years in which it was made, the part that the
 * condition names; of its places, likewise; of numbers nothing is known without the serial.
 */
export function conditionShare({ when, pack }: FactKnown, model: ModelKnown, numbered: NumberedIn | null): number {
  if (!when) return 1;
  let share = 1;
  if (when.made) share *= yearsShare(when.made, numbered?.run.year ?? null, model);
  if (when.places) share *= placesShare(when.places, numbered?.run.place ?? null, model.def.places ?? []);
  if (when.serials) share *= numbered ? Number(isIn(when.serials, pack, numbered)) : UNKNOWN_CONDITION;
  return share;
}

function yearsShare(span: NonNullable<When['made']>, year: number | null, { def }: ModelKnown): number {
  const from = span.from ?? Number.NEGATIVE_INFINITY;
  const to = span.to ?? Number.POSITIVE_INFINITY;
  if (year !== null) return Number(year >= from && year <= to);
  const first = def.made?.from;
  const last = def.made?.to;
  if (first === undefined || last === undefined || last < first) return UNKNOWN_CONDITION;
  const overlap = Math.min(last, to) - Math.max(first, from) + 1;
  return Math.min(1, Math.max(0, overlap) / (last - first + 1));
}

function placesShare(places: readonly string[], place: string | null, made: readonly string[]): number {
  const named = new Set(places.map((one) => one.toLowerCase()));
  if (place !== null) return Number(named.has(place.toLowerCase()));
  if (made.length === 0) return UNKNOWN_CONDITION;
  return made.filter((one) => named.has(one.toLowerCase())).length / made.length;
}

function isIn(ranges: NonNullable<When['serials']>, pack: string, { run, number }: NumberedIn): boolean {
  return ranges.some((range) => {
    if (range.scheme !== run.scheme.id || pack !== run.pack) return false;
    const first = numberInTable(run.scheme, range.first);
    const last = numberInTable(run.scheme, range.last);
    return first !== null && last !== null && number >= first && number <= last;
  });
}
