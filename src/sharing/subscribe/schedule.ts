const HOUR = 3_600_000;
const DAY = 24 * HOUR;
/** Days between checks after so many failures in a row; after more, the last of them. */
const BACK_OFF = [1, 1, 2, 4, 7];

/**
 * When to check again: a day later, and after failures less and less often. Up to four hours more, by lot, spread what
 * many subscribers ask of one host, who otherwise all come after the same announcement at the same hour.
 * @param now milliseconds; @param failures in a row; @param lot from 0 to 1
 */
export function nextCheck(now: number, failures: number, lot: number): number {
  const days = BACK_OFF[Math.min(failures, BACK_OFF.length - 1)] ?? 1;
  return now + days * DAY + Math.round(lot * 4 * HOUR);
}

/**
 * Whether a check is due.
 * @param due milliseconds; later than any check could be set for, it was written while the clock was wrong
 */
export function isDue(now: number, due: number): boolean {
  return due <= now || due > nextCheck(now, BACK_OFF.length, 1);
}

/** Minutes between two looks at what is due. The looks themselves ask nobody anything. */
export const LOOK_EVERY = 180;
