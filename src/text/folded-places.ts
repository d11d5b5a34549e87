import type { Span } from './span';

/**
 * Where the parts of a folded text stand in the original. Most of an advert is folded letter for letter, so that whole
 * runs are kept and not each letter: a run begins at a place of the folded text and at one of the original; what was
 * folded as one has an end of its own.
 */
export class FoldedPlaces {
  readonly #folded: number[] = [];
  readonly #starts: number[] = [];
  /** The original's end of what was folded as one, or -1 for a run of letters that stand for themselves. */
  readonly #ends: number[] = [];
  #length = 0;

  /** So many units that stand for themselves. */
  addRun(start: number, length: number): void {
    this.#add(start, -1, length);
  }

  /** A stretch of the original that gave so many units, each of which stands for all of it. */
  addWhole(start: number, end: number, length: number): void {
    this.#add(start, end, length);
  }

  /** The last unit reaches on, to `end`. */
  lengthenLast(end: number): void {
    if (this.#length === 0) return;
    const { start } = this.#originalOf(this.#length - 1);
    this.#length--;
    if (this.#folded.at(-1) === this.#length) {
      this.#folded.pop();
      this.#starts.pop();
      this.#ends.pop();
    }
    this.#add(start, end, 1);
  }

  /** The stretch of the original, `originalLength` units long, that folded units from `start` to `end` came from. */
  toOriginal(start: number, end: number, originalLength: number): Span {
    const from = start < this.#length ? this.#originalOf(start).start : originalLength;
    if (end <= start || this.#length === 0) return { start: from, end: from };
    return { start: from, end: this.#originalOf(Math.min(end, this.#length) - 1).end };
  }

  #add(start: number, end: number, length: number): void {
    this.#folded.push(this.#length);
    this.#starts.push(start);
    this.#ends.push(end);
    this.#length += length;
  }

  #originalOf(unit: number): Span {
    let low = 0;
    let high = this.#folded.length;
    while (high - low > 1) {
      const middle = (low + high) >>> 1;
      if (this.#folded[middle]! <= unit) low = middle;
      else high = middle;
    }
    const start = this.#starts[low]!;
    const end = this.#ends[low]!;
    const offset = unit - this.#folded[low]!;
    return end < 0 ? { start: start + offset, end: start + offset + 1 } : { start, end };
  }
}
