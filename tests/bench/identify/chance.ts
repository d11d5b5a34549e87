/** Pseudo-random numbers that are the same in every run (mulberry32, public domain). */
export class Chance {
  #state: number;

  constructor(seed: number) {
    this.#state = seed;
  }

  /** 0 up to 1. */
  next(): number {
    this.#state = (this.#state + 0x6d2b79f5) | 0;
    let t = Math.imul(this.#state ^ (this.#state >>> 15), 1 | this.#state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  }

  happens(probability: number): boolean {
    return this.next() < probability;
  }

  below(count: number): number {
    return Math.floor(this.next() * count);
  }

  /** A position, as often as its weight says. */
  weighted(weights: ArrayLike<number>): number {
    let sum = 0;
    for (let i = 0; i < weights.length; i++) sum += weights[i]!;
    let left = this.next() * sum;
    for (let i = 0; i < weights.length; i++) {
      left -= weights[i]!;
      if (left < 0) return i;
    }
    return weights.length - 1;
  }

  shuffled<T>(list: readonly T[]): T[] {
    const out = [...list];
    for (let i = out.length - 1; i > 0; i--) {
      const j = this.below(i + 1);
      [out[i], out[j]] = [out[j]!, out[i]!];
    }
    return out;
  }
}
