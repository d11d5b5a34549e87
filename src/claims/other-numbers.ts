import { clauseAt, type TextPart, tokenAt } from './part-text';

/** Words by which a number is of something else than the thing itself. */
export const OTHER_NUMBERS: ReadonlySet<string> = new Set(
  (
    'part patent patents pat casting model item ref lot stock phone tel mobile order article artikel motor teil modell telefon case ' +
    'cabinet table controller pedal lamp box key ticket previous first koffer tisch anlasser moteur coffret ' +
    'id ad advert listing anzeige anzeigennummer inserat annonce reference telephone sku isbn ean'
  ).split(' '),
);
const NEAR = 4;

/**
 * Words right before, in the same clause, say that the number is of something else.
 * @param within in tokens
 */
export function isOtherNumber(part: TextPart, start: number, within = NEAR): boolean {
  const first = clauseAt(part, tokenAt(part, start))?.first ?? 0;
  const near = Math.min(within, tokenAt(part, start) - first);
  return wordsBefore(part, start, near).some((word) => OTHER_NUMBERS.has(word));
}

/** So many tokens before a place, folded. */
export function wordsBefore(part: TextPart, start: number, most: number): string[] {
  const at = tokenAt(part, start);
  return part.tokens.slice(Math.max(0, at - most), at).map(({ folded }) => folded);
}
