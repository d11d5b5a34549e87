/**
 * A band whose median is not the geometric mean of its ends is a skewed one. On this scale it is even: the logarithm
 * of a price, counted from the median in lengths of the side on which it lies, so that the ends are -1 and 1.
 */
export interface TwoSided {
  middle: number;
  below: number;
  above: number;
}

const LEAST_SIDE = 1e-6;

/** @param band prices above zero, low <= mid <= high */
export function twoSided(band: { low: number; mid: number; high: number }): TwoSided {
  return {
    middle: Math.log(band.mid),
    below: Math.max(Math.log(band.mid / band.low), LEAST_SIDE),
    above: Math.max(Math.log(band.high / band.mid), LEAST_SIDE),
  };
}

export function toEven(price: number, { middle, below, above }: TwoSided): number {
  const away = Math.log(price) - middle;
  return away / (away < 0 ? below : above);
}

export function fromEven(even: number, { middle, below, above }: TwoSided): number {
  return Math.exp(middle + even * (even < 0 ? below : above));
}
