const FEWEST_DIGITS = 9;
const MOST_CHARACTERS = 24;
const PART = /[\d\p{Zs}()/.+\p{Pd}]/u;
/** North American: three, three and four digits, with marks between. */
const AMERICAN = /^[\p{Zs}(]*\d{3}[)\p{Zs}.\p{Pd}]{1,2}\d{3}[\p{Zs}.\p{Pd}]\d{4}$/u;

/** Does the digit at `at` of a text stand in a telephone number? Nine or more digits that begin with 0 or +. */
export function isPhoneNumber(text: string, at: number): boolean {
  let start = at;
  let end = at;
  while (start > 0 && at - start < MOST_CHARACTERS && PART.test(text[start - 1]!)) start--;
  while (end < text.length && end - at < MOST_CHARACTERS && PART.test(text[end]!)) end++;
  const run = text.slice(start, end).replace(/^[^\d+(]+|\D+$/g, '');
  const digits = run.replace(/\D/g, '');
  if (AMERICAN.test(run)) return true;
  return digits.length >= FEWEST_DIGITS && /^[(]?(?:\+|0)/.test(run);
}
