import type { Audit, Follows, Likely } from '../audit/types';

/** A candidate that is this improbable is not set beside another one. */
const NOT_WORTH_COMPARING = 0.02;

/** What the most likely one is set beside: the next best that the packs know something of, or null. */
export function nextBest([, ...others]: readonly Likely[]): Likely | null {
  const next = others.find(({ kind, follows }) => kind !== 'none' && follows.length > 0);
  return next && next.probability >= NOT_WORTH_COMPARING ? next : null;
}

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

/** One property of two candidates; null where nothing is said of it. */
export interface Beside {
  attribute: string;
  name: string;
  left: Follows | null;
  right: Follows | null;
  differs: boolean;
}

/** Two candidates' properties side by side, what differs first. */
export function sideBySide(left: Likely, right: Likely): Beside[] {
  const of = ({ follows }: Likely, attribute: string) => follows.find((each) => each.attribute === attribute) ?? null;
  const onlyRight = right.follows.filter(({ attribute }) => of(left, attribute) === null);
  const rows = [...left.follows, ...onlyRight].map(({ attribute, name }): Beside => {
    const [a, b] = [of(left, attribute), of(right, attribute)];
    return { attribute, name, left: a, right: b, differs: a?.text !== b?.text };
  });
  return [...rows.filter(({ differs }) => differs), ...rows.filter(({ differs }) => !differs)];
}

/**
 * Whether what it most likely is adds anything: only of a thing on sale or on the table, and not where all that there is
 * to say is that the packs know none like it and nobody has looked yet.
 */
export function likelyAdds({ kind, likely }: Audit, seen: number): boolean {
  const [first] = likely;
  return kind === 'item' && first !== undefined && (first.kind !== 'none' || seen > 0);
}
