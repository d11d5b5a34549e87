/** Where the marks of a price scale stand, in hundredths of its width. */
export interface Scale {
  low: number;
  mid: number;
  high: number;
  asked: number | null;
  /** Prices that were seen, in their order. */
  seen: number[];
  /** Whether some of those lie further out than the scale goes, and stand at its edge. */
  beyond: boolean;
}

/** Room at either end, in hundredths, so that a mark's label is never cut off. */
const MARGIN = 8;
/** How many times as far out as the band's ends a price that was seen still widens the scale: one slip can't flatten it. */
const FURTHEST = 4;

/**
 * Lays prices out by their ratios, so that half the price and twice the price are equally far from the middle.
 * @param asked the advert's price in the band's currency, or null
 * @param seen prices that were seen, in the band's currency
 */
export function scaleOf(
  band: { low: number; mid: number; high: number },
  asked: number | null,
  seen: readonly number[] = [],
): Scale {
  const ends = [band.low, band.mid, band.high, ...(asked === null ? [] : [asked])].filter((value) => value > 0);
  const [furthestLow, furthestHigh] = [Math.min(...ends, band.low / FURTHEST), Math.max(...ends, band.high * FURTHEST)];
  const held = seen.map((price) => Math.min(Math.max(price, furthestLow), furthestHigh));
  const [least, most] = [
    held.reduce((a, b) => Math.min(a, b), Math.min(...ends)),
    held.reduce((a, b) => Math.max(a, b), Math.max(...ends)),
  ];
  const from = Math.log(least);
  const width = Math.max(Math.log(most) - from, 0.1);
  const at = (value: number) => MARGIN + ((Math.log(Math.max(value, least)) - from) / width) * (100 - 2 * MARGIN);
  return {
    ...{ low: at(band.low), mid: at(band.mid), high: at(band.high), asked: asked === null ? null : at(asked) },
    ...{ seen: held.map(at), beyond: held.some((price, i) => price !== seen[i]) },
  };
}

/**
 * In which row above the line each mark stands, 0 the lowest, so that near ones don't hide each other. Where all rows are
 * taken, they share the one whose last mark is furthest away.
 * @param at places along the line
 * @param apart how far two marks of one row have to stand from each other
 */
export function rowsOf(at: readonly number[], apart: number, mostRows: number): number[] {
  const ends: number[] = [];
  const rows = new Array<number>(at.length).fill(0);
  const inOrder = at.map((_, i) => i).sort((a, b) => at[a]! - at[b]! || a - b);
  for (const i of inOrder) {
    let row = ends.findIndex((end) => at[i]! - end >= apart);
    if (row < 0) row = ends.length < mostRows ? ends.length : ends.indexOf(Math.min(...ends));
    ends[row] = at[i]!;
    rows[i] = row;
  }
  return rows;
}
