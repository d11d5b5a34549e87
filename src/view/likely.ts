import type { Audit, Follows, Likely } from '../audit/types';

/** A candidate that is this improbable is passed over when it is asked what holds of all of them. */
const OVERLOOKED = 0.05;

/** What follows whichever of the candidates it is: what is said of each of them, in the same words. */
export function commonFollows(likely: readonly Likely[]): Follows[] {
  const [first, ...others] = likely.filter(({ kind, probability }) => kind !== 'none' && probability >= OVERLOOKED);
  return (first?.follows ?? []).flatMap((each) => {
    const same = others.map(({ follows }) => follows.find(({ attribute }) => attribute === each.attribute));
    if (!same.every((other) => other?.text === each.text)) return [];
    return [{ ...each, usually: each.usually || same.some((other) => other?.usually) }];
  });
}

/**
 * Whether what it most likely is adds anything: only of a thing on sale or on the table, and not where all that there is
 * to say is that the packs know none like it and nobody has looked yet.
 */
export function likelyAdds({ kind, likely }: Audit, seen: number): boolean {
  const [first] = likely;
  return kind === 'item' && first !== undefined && (first.kind !== 'none' || seen > 0);
}
