import { findMoney } from '../quantity/money';
import type { TextPart } from './part-text';
import type { NameClaim } from './reading';

/** So many lines with a thing's name and a price are a shop's list. */
const LEAST_LINES = 3;

/** Each offer has its line, or its sentence that ends in a price. */
const LINE_END = /\n|(?<=\d)\.(?=\s+\p{Lu})/u;

const LIST = /\b(?:(?:price|stock|machine) ?list|preisliste|liste de prix)\b/i;

/** "Name, boxed .... £80", line by line, under a title that names no one model: many offers, each with its price. */
export function listsOffers(
  title: TextPart | null,
  description: TextPart | null,
  names: readonly NameClaim[],
): boolean {
  if (!description || names.some(({ field, of }) => field === 'title' && 'model' in of)) return false;
  const isCalledList = LIST.test(title?.text ?? '');
  let start = 0;
  let found = 0;
  for (const line of description.text.split(LINE_END)) {
    const end = start + line.length;
    const named = names.some(
      (name) => name.field === description.field && 'model' in name.of && name.start >= start && name.end <= end,
    );
    if ((named || isCalledList) && findMoney(line).length > 0) found++;
    start = end + 1;
  }
  return found >= LEAST_LINES;
}
