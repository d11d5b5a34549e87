/** Where years stand on a drawn time line, in hundredths of its width. */
export interface TimeLine {
  from: number;
  /** The year after the last one. */
  to: number;
  ticks: { year: number; at: number }[];
  /** Where a year begins. */
  at: (year: number) => number;
}

/** Room at either end for a year's digits, in hundredths. */
const MARGIN = 6;
const MOST_TICKS = 5;
const STEPS = [1, 2, 5, 10, 20, 50, 100];

/** Lays out some years; null where there are none. Each year is a stretch, not a point. */
export function timeLineOf(years: readonly number[]): TimeLine | null {
  if (years.length === 0) return null;
  const from = Math.min(...years);
  const to = Math.max(...years) + 1;
  const at = (year: number) => MARGIN + ((year - from) / (to - from)) * (100 - 2 * MARGIN);
  const step = STEPS.find((each) => (to - from) / each <= MOST_TICKS) ?? 500;
  const ticks: TimeLine['ticks'] = [];
  for (let year = Math.ceil(from / step) * step; year <= to; year += step) ticks.push({ year, at: at(year) });
  return { from, to, ticks, at };
}
