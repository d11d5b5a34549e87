import type { PhraseMatch } from '../text/phrases';

/**
 * The matches that no wider match contains, of matches in the order of `PhraseIndex.search` (by where they begin, the
 * longest first). One pass: a match is contained if one before it reaches as far and is wider.
 */
export function widest<T>(matches: readonly PhraseMatch<T>[]): PhraseMatch<T>[] {
  let reach = -1;
  let reachFrom = -1;
  return matches.filter(({ firstToken, lastToken }) => {
    const contained = lastToken < reach || (lastToken === reach && firstToken > reachFrom);
    if (lastToken > reach) {
      reach = lastToken;
      reachFrom = firstToken;
    }
    return !contained;
  });
}
