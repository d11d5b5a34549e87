import type { Candidate, FieldNote } from '../types';
import { grouped, noteOf } from './groups';

/** A field of few kinds ("sold", "reserved"): that for which most speaks. `kindOf` reads a candidate's words. */
export function settleKind<Kind extends string>(
  candidates: Candidate[],
  kindOf: (words: string) => Kind | null,
): { kind: Kind; note: FieldNote } | null {
  const known = candidates.filter(({ value }) => kindOf(value) !== null);
  const [winner, ...losers] = grouped(known, ({ value }) => kindOf(value)!);
  const [best] = winner?.members ?? [];
  return winner && best ? { kind: kindOf(best.value)!, note: noteOf(winner, best.source, losers) } : null;
}
