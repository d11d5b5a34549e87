import type { Follows, Likely } from '../audit/types';

/** A candidate that is this improbable is not set beside another one. */
const NOT_WORTH_COMPARING = 0.02;

/** As many stand beside each other as can be read at once. */
const MOST_BESIDE = 3;

/** The candidates that are set beside each other, the likeliest first: two or three of which packs know something, or none. */
export function besideOf(likely: readonly Likely[]): Likely[] {
  const known = likely.filter(
    ({ kind, follows, probability }) => kind !== 'none' && follows.length > 0 && probability >= NOT_WORTH_COMPARING,
  );
  return known.length < 2 ? [] : known.slice(0, MOST_BESIDE);
}

/** One property of the candidates, in their order: all that may be so of each, nothing where nothing is said of it. */
export interface BesideRow {
  attribute: string;
  name: string;
  each: Follows[][];
  differs: boolean;
}

/** The candidates' properties side by side, what differs first. */
export function rowsBeside(candidates: readonly Likely[]): BesideRow[] {
  const named = new Map<string, string>();
  for (const { attribute, name } of candidates.flatMap(({ follows }) => follows))
    if (!named.has(attribute)) named.set(attribute, name);
  const rows = [...named].map(([attribute, name]): BesideRow => {
    const each = candidates.map(({ follows }) => follows.filter((one) => one.attribute === attribute));
    const said = each.map((all) => JSON.stringify(all.map(({ text }) => text)));
    return { attribute, name, each, differs: said.some((text) => text !== said[0]) };
  });
  return [...rows.filter(({ differs }) => differs), ...rows.filter(({ differs }) => !differs)];
}
