import { Column } from './column';

/** So many runs, as a power of two, lie in one stretch of the number line on average, and under each lowest node. */
const BITS = 3;

/**
 * Which runs of one scheme hold a number?
 *
 * Problem: a million runs, which nest and overlap, and one wide run must not make every question slow.
 * Example: runs 1-100, 40-60, 50-50, 70-80; which hold 65? Sorted by first number: 1, 40, 50, 70.
 * Method: the line from the first beginning to the last is cut into stretches of one length, one for each eight runs;
 * of each it is kept which run is the first to begin there. So only the number's own stretch is searched for the place
 * after the last run that begins no later than the number: before 70. From there back to the first run one has to find
 * those that reach the number. How far runs reach at the most is kept of each eight, each sixteen and so on, so that the
 * most that end at this place and do not reach it are passed over in one step: here 50 and 40, one by one, being fewer
 * than eight. 1-100 reaches it.
 */
export class RunSearch {
  readonly #firsts: Column;
  readonly #widths: Column;
  readonly #from: number;
  readonly #count: number;
  #index: Index | null = null;

  /** The runs from `from` to `to`, without `to`. */
  constructor(firsts: Column, widths: Column, from: number, to: number) {
    this.#firsts = firsts;
    this.#widths = widths;
    this.#from = from;
    this.#count = to - from;
  }

  /** Positions of runs that hold the number, those that begin last first, `most` of them. */
  holding(number: number, most: number): number[] {
    const found: number[] = [];
    const { reaches, room } = this.#made();
    for (let end = this.after(number) - this.#from; end > 0 && found.length < most; ) {
      // The largest node that ends here, then its later half, and so on, until one does not reach the number.
      let level = 31 - Math.clz32(end & -end);
      while (level >= BITS && reaches.at((room >> level) + (end >> level) - 1) >= number) level--;
      if (level >= BITS) end -= 1 << level;
      else {
        const at = this.#from + --end;
        if (this.#firsts.at(at) + this.#widths.at(at) >= number) found.push(at);
      }
    }
    return found;
  }

  /** The position after the last run that begins at or before the number. */
  after(number: number): number {
    const { starts, base, scale } = this.#made();
    if (number < base) return this.#from;
    const stretch = Math.floor((number - base) * scale);
    let low = this.#from + (starts[stretch] ?? this.#count);
    let high = this.#from + (starts[stretch + 1] ?? this.#count);
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.#firsts.at(middle) <= number) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  /** Made when first asked for: one walk through the numbers. */
  #made(): Index {
    this.#index ??= indexOf(this.#firsts, this.#widths, this.#from, this.#count);
    return this.#index;
  }
}

interface Index {
  /** Which run is the first to begin in each stretch or behind it; one more for their end. */
  starts: Uint32Array;
  /** Where the first stretch begins. */
  base: number;
  /** Stretches to a number. */
  scale: number;
  /** How many runs the highest node has room for: a power of two. */
  room: number;
  /** How far all runs reach at place 1, each half of them at 2 and 3, each quarter at 4 to 7, down to eight runs each. */
  reaches: Column;
}

function indexOf(firsts: Column, widths: Column, from: number, count: number): Index {
  const stretches = Math.ceil(count / 2 ** BITS);
  const base = count && firsts.at(from);
  const scale = count && stretches / (firsts.at(from + count - 1) - base + 1);
  const starts = new Uint32Array(stretches + 1);
  const room = 1 << Math.max(BITS, 32 - Math.clz32(count - 1));
  const furthest = new Float64Array(((room + count - 1) >> BITS) + 1);
  let stretch = 0;
  for (let i = 0; i < count; i++) {
    const first = firsts.at(from + i);
    while (stretch < Math.floor((first - base) * scale)) starts[++stretch] = i;
    const node = (room + i) >> BITS;
    furthest[node] = Math.max(furthest[node]!, first + widths.at(from + i));
  }
  starts.fill(count, stretch + 1);
  for (let node = furthest.length - 1; node > 1; node--)
    furthest[node >> 1] = Math.max(furthest[node >> 1]!, furthest[node]!);
  return { starts, base, scale, room, reaches: Column.of(furthest) };
}
