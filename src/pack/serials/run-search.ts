import type { Column } from './column';

/** Children of a node; so many numbers of four bytes lie in one line of a processor's cache. */
const EACH = 16;

/**
 * Which runs of one scheme hold a number?
 *
 * Problem: a million runs, which nest and overlap, and one wide run must not make every question slow.
 * Example: runs 1-100, 40-60, 50-50, 70-80; which hold 50? Sorted by first number: 1, 40, 50, 70.
 * Method: the runs, sorted by first number, are the leaves of a tree with sixteen children to a node; each node keeps
 * where it begins and the furthest number that it reaches. From the top down one finds the place after the last run
 * that begins no later than the number (70's); from there back one looks only into nodes that reach it (not into a
 * node of 16 runs that all end before). Three steps of sixteen neighbours for 4,000 runs, five for a million.
 */
export class RunSearch {
  readonly #firsts: Column;
  readonly #widths: Column;
  readonly #from: number;
  readonly #count: number;
  /** From the runs' parents up to the top, of sixteen nodes at most: where each begins, and how far it reaches. */
  #levels: { begins: Float64Array; reaches: Float64Array }[] | null = null;

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
    const tops = this.#tree().length;
    let end = this.after(number) - this.#from;
    for (let level = 0; end > 0; level++) {
      const begin = level === tops ? 0 : Math.floor((end - 1) / EACH) * EACH;
      for (let node = end - 1; node >= begin && found.length < most; node--)
        this.#gather(level, node, number, most, found);
      end = begin / EACH;
    }
    return found;
  }

  /** The position after the last run that begins at or before the number. */
  after(number: number): number {
    const tree = this.#tree();
    let begin = 0;
    let end = tree.at(-1)?.begins.length ?? this.#count;
    for (let level = tree.length; level >= 0; level--) {
      let node = begin;
      while (node < end && this.#begins(level, node) <= number) node++;
      if (node === 0) return this.#from;
      if (level === 0) return this.#from + node;
      begin = (node - 1) * EACH;
      end = Math.min(begin + EACH, this.#size(level - 1));
    }
    return this.#from;
  }

  #gather(level: number, node: number, number: number, most: number, found: number[]): void {
    if (this.#reaches(level, node) < number) return;
    if (level === 0) found.push(this.#from + node);
    else
      for (let child = Math.min((node + 1) * EACH, this.#size(level - 1)) - 1; child >= node * EACH; child--) {
        if (found.length >= most) return;
        this.#gather(level - 1, child, number, most, found);
      }
  }

  #size(level: number): number {
    return level === 0 ? this.#count : this.#tree()[level - 1]!.begins.length;
  }

  #begins(level: number, node: number): number {
    return level === 0 ? this.#firsts.at(this.#from + node) : this.#tree()[level - 1]!.begins[node]!;
  }

  #reaches(level: number, node: number): number {
    if (level > 0) return this.#tree()[level - 1]!.reaches[node]!;
    return this.#firsts.at(this.#from + node) + this.#widths.at(this.#from + node);
  }

  /** Made when first asked for: one walk through the numbers. */
  #tree(): { begins: Float64Array; reaches: Float64Array }[] {
    if (this.#levels) return this.#levels;
    const levels: { begins: Float64Array; reaches: Float64Array }[] = [];
    this.#levels = levels;
    for (let below = this.#count; below > EACH; below = levels.at(-1)!.begins.length) {
      const count = Math.ceil(below / EACH);
      const [begins, reaches] = [new Float64Array(count), new Float64Array(count)];
      for (let node = 0; node < below; node++) {
        const parent = Math.floor(node / EACH);
        if (node % EACH === 0) begins[parent] = this.#begins(levels.length, node);
        reaches[parent] = Math.max(reaches[parent]!, this.#reaches(levels.length, node));
      }
      levels.push({ begins, reaches });
    }
    return levels;
  }
}
