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
  readonly #index: RunIndex;
  /** Where the first stretch begins. */
  readonly #base: number;
  /** Stretches to a number. */
  readonly #scale: number;
  readonly #room: number;

  constructor({ firsts, widths, index }: SearchedRuns) {
    this.#firsts = firsts;
    this.#widths = widths;
    this.#index = index;
    this.#base = firsts.length && firsts.at(0);
    this.#scale = scaleOf(firsts);
    this.#room = roomFor(firsts.length);
  }

  /** Positions of runs that hold the number, those that begin last first, `most` of them. */
  holding(number: number, most: number): number[] {
    const found: number[] = [];
    const { reaches } = this.#index;
    for (let end = this.after(number); end > 0 && found.length < most; ) {
      // The largest node that ends here, then its later half, and so on, until one does not reach the number.
      let level = 31 - Math.clz32(end & -end);
      while (level >= BITS && reaches.at((this.#room >> level) + (end >> level) - 1) >= number) level--;
      if (level >= BITS) end -= 1 << level;
      else {
        const at = --end;
        if (this.#firsts.at(at) + this.#widths.at(at) >= number) found.push(at);
      }
    }
    return found;
  }

  /** The position after the last run that begins at or before the number. */
  after(number: number): number {
    if (number < this.#base) return 0;
    const { starts } = this.#index;
    const { length } = this.#firsts;
    const stretch = Math.floor((number - this.#base) * this.#scale);
    let low = stretch < starts.length ? starts.at(stretch) : length;
    let high = stretch + 1 < starts.length ? starts.at(stretch + 1) : length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.#firsts.at(middle) <= number) low = middle + 1;
      else high = middle;
    }
    return low;
  }
}

/** What a search has to know of its runs beside their numbers. */
export interface RunIndex {
  /** Which run is the first to begin in each stretch or behind it; one more for their end. */
  starts: Column;
  /** How far all runs reach at place 1, each half of them at 2 and 3, each quarter at 4 to 7, down to eight runs each. */
  reaches: Column;
}

/** Runs in order, of two that begin alike the wider first. */
export interface SearchedRuns {
  firsts: Column;
  /** Last number less first number. */
  widths: Column;
  index: RunIndex;
}

/** The index of such runs: one walk through the numbers. */
export function runIndexOf(firsts: Column, widths: Column): RunIndex {
  const { length: count } = firsts;
  const base = count && firsts.at(0);
  const scale = scaleOf(firsts);
  const starts = new Uint32Array(stretchesFor(count) + 1);
  const room = roomFor(count);
  const furthest = new Float64Array(((room + count - 1) >> BITS) + 1);
  let stretch = 0;
  for (let i = 0; i < count; i++) {
    const first = firsts.at(i);
    while (stretch < Math.floor((first - base) * scale)) starts[++stretch] = i;
    const node = (room + i) >> BITS;
    furthest[node] = Math.max(furthest[node]!, first + widths.at(i));
  }
  starts.fill(count, stretch + 1);
  for (let node = furthest.length - 1; node > 1; node--)
    furthest[node >> 1] = Math.max(furthest[node >> 1]!, furthest[node]!);
  return { starts: Column.of(starts), reaches: Column.of(furthest) };
}

const stretchesFor = (count: number): number => Math.ceil(count / 2 ** BITS);

/** How many runs the highest node has room for: a power of two. */
const roomFor = (count: number): number => 1 << Math.max(BITS, 32 - Math.clz32(count - 1));

function scaleOf(firsts: Column): number {
  const { length: count } = firsts;
  return count && stretchesFor(count) / (firsts.at(count - 1) - firsts.at(0) + 1);
}
