/** Where the marks of a price scale stand, in hundredths of its width. */
export interface Scale {
  low: number;
  mid: number;
  high: number;
  asked: number | null;
}

/** Room at either end, in hundredths, so that a mark's label is never cut off. */
const MARGIN = 8;

/**
 * Lays prices out by their ratios, so that half the price and twice the price are equally far from the middle.
 * @param asked the advert's price in the band's currency, or null
 */
export function scaleOf(band: { low: number; mid: number; high: number }, asked: number | null): Scale {
  const values = [band.low, band.mid, band.high, ...(asked === null ? [] : [asked])].filter((value) => value > 0);
  const from = Math.log(Math.min(...values));
  const width = Math.max(Math.log(Math.max(...values)) - from, 0.1);
  const at = (value: number) =>
    MARGIN + ((Math.log(Math.max(value, Math.exp(from))) - from) / width) * (100 - 2 * MARGIN);
  return { low: at(band.low), mid: at(band.mid), high: at(band.high), asked: asked === null ? null : at(asked) };
}
