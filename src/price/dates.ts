/** Whole and broken years between two dates; a date known by its year or month alone stands at the middle of it. */
export function yearsBetween(from: string, to: string): number {
  return yearOf(to) - yearOf(from);
}

function yearOf(date: string): number {
  const [year, month, day] = date.split('-').map(Number);
  if (month === undefined) return year! + 0.5;
  return year! + (month - 1) / 12 + (day === undefined ? 0.5 / 12 : (day - 1) / 365.25);
}
