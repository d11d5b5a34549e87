const FEWEST_DIGITS = 9;
const MOST_CHARACTERS = 24;
const PART = /[\d ()/.+-]/;
/** North American: three, three and four digits, with marks between. */
const AMERICAN = /^[ (]*\d{3}[) .-]{1,2}\d{3}[ .-]\d{4}$/;

/** Does the digit at `at` in a folded text stand in a telephone number? Nine or more digits that begin with 0 or +. */
export function isPhoneNumber(folded: string, at: number): boolean {
  let start = at;
  let end = at;
  while (start > 0 && at - start < MOST_CHARACTERS && PART.test(folded[start - 1]!)) start--;
  while (end < folded.length && end - at < MOST_CHARACTERS && PART.test(folded[end]!)) end++;
  const run = folded.slice(start, end).trim();
  const digits = run.replace(/\D/g, '');
  if (AMERICAN.test(run)) return true;
  return digits.length >= FEWEST_DIGITS && /^[(]?(?:\+|0)/.test(run);
}
