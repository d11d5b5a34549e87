export type Numbers = Uint8Array | Uint16Array | Uint32Array | Float64Array;

/** Whole numbers below 2^53, each in as few bytes as the column needs: none at all where they are all the same. */
export class Column {
  /** @param data what each number is above `base`; null where every one is `base` */
  constructor(
    readonly length: number,
    readonly base: number,
    readonly data: Numbers | null,
  ) {}

  at(i: number): number {
    return this.data === null ? this.base : this.base + this.data[i]!;
  }

  static of(values: ArrayLike<number>): Column {
    let [least, most] = [Number.POSITIVE_INFINITY, 0];
    for (let i = 0; i < values.length; i++) {
      const value = values[i]!;
      if (value < least) least = value;
      if (value > most) most = value;
    }
    if (values.length === 0) return new Column(0, 0, null);
    if (least === most) return new Column(values.length, least, null);
    const data = room(most - least, values.length);
    for (let i = 0; i < values.length; i++) data[i] = values[i]! - least;
    return new Column(values.length, least, data);
  }
}

function room(most: number, length: number): Numbers {
  if (most < 2 ** 8) return new Uint8Array(length);
  if (most < 2 ** 16) return new Uint16Array(length);
  if (most < 2 ** 32) return new Uint32Array(length);
  return new Float64Array(length);
}
