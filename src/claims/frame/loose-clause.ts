import type { WordClass } from './types';

/** A word of the clause with what packs make of it. */
export interface LooseWord {
  token: number;
  folded: string;
  known: WordClass | null;
}

export interface LooseClause {
  words: readonly LooseWord[];
  first: number;
  last: number;
  /** Words of the same sentence in clauses before. */
  aside: readonly LooseWord[];
  /** Words of the clause right after it in the same sentence. */
  goesOn: readonly LooseWord[];
  denied: boolean;
}

export const written = (words: readonly LooseWord[]): string =>
  words
    .map(({ folded }) => folded)
    .join(' ')
    .replaceAll("' ", "'");

/** "Mit dem Hebel stellt man auf Zickzack um." */
export function isSwitch({ words, last }: LooseClause): boolean {
  return words.slice(last + 1).some(({ folded }) => /^(?:um|um(?:ge)?(?:stell|schalt)\w*)$/.test(folded));
}
