import { clauseAt, FARTHEST, type TextPart } from './part-text';

/** Folded; English, German, French. Common practice, no source. */
const FIRMS = new Set(
  'firm company maker makers manufacturer factory business club house firma hersteller werk fabrik haus maison fabricant usine entreprise'.split(
    ' ',
  ),
);

const isLeaving = ({ folded }: TextPart['tokens'][number]): boolean => /^sorti(?:e|es|s)?$/.test(folded);

/** "The firm dates from 1884", "the company had a works at …": its clause spoke of who made it, not of the thing. */
export function isOfTheFirm(part: TextPart, token: number): boolean {
  const clause = clauseAt(part, token);
  if (!clause) return false;
  const from = Math.max(clause.first, token - FARTHEST);
  const before = part.tokens.slice(from, token);
  // "Sortie d'usine en 1952": of the thing.
  return before.some(({ folded }, at) => FIRMS.has(folded) && !before.slice(Math.max(0, at - 3), at).some(isLeaving));
}
