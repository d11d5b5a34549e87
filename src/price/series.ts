/** Points in time, oldest first: a date (year, month or day, ISO 8601) and a value above zero. */
export type Points = readonly (readonly [date: string, value: number])[];

/**
 * The value that stood at a date: the last one at or before it; after the series' end its last one.
 * @returns null before its beginning: nothing is known of that time
 */
export function valueAt(points: Points, date: string): number | null {
  let found: number | null = null;
  for (const [at, value] of points) {
    // "1954" stands for all of that year: it holds for any day of it.
    if (at > date.slice(0, at.length)) break;
    found = value;
  }
  return found;
}

/** An amount of one date in the money of another, by a price index. Null where the index doesn't reach back so far. */
export function inMoneyOf(amount: number, points: Points, from: string, to: string): number | null {
  const [then, now] = [valueAt(points, from), valueAt(points, to)];
  return then === null || now === null ? null : (amount * now) / then;
}

/** An amount of a date as so many weeks of the average wage of that date. Null where the series doesn't reach back. */
export function inWeeksOfWage(amount: number, weekly: Points, date: string): number | null {
  const wage = valueAt(weekly, date);
  return wage === null ? null : amount / wage;
}
