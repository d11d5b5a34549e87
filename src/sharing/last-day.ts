import type { About } from '../pack/schema/about';

/**
 * The last day of an edition, after which it wants to be followed by another one: what the pack says of itself (a day, a
 * month or a year, each to its end) or what its seal says. One signature holds for both, so that neither takes the other
 * back, and the earlier one counts: whoever looks for a newer edition too soon loses nothing.
 * @param sealed YYYY-MM-DD, or null
 * @returns YYYY-MM-DD, or null where neither says one
 */
export function lastDay({ expires }: Pick<About, 'expires'>, sealed: string | null): string | null {
  if (expires === undefined) return sealed;
  const said = endOf(expires);
  return sealed !== null && sealed < said ? sealed : said;
}

/** The last day of a day, month or year of the Gregorian calendar. */
function endOf(date: string): string {
  const [year = '', month = '12', day] = date.split('-');
  // The day before the first of the next month; as text, for `Date` takes years below 100 for others.
  const days = new Date(Date.UTC(2000 + (Number(year) % 400), Number(month), 0)).getUTCDate();
  return `${year}-${month}-${day ?? String(days).padStart(2, '0')}`;
}
