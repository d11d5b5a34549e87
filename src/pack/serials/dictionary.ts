/** Values that repeat, each once, in the order in which they came. */
export class Dictionary<T> {
  readonly values: T[] = [];
  readonly #places = new Map<string, number>();
  readonly #keyOf: (value: T) => string;

  /** @param keyOf two values with one key are the same */
  constructor(keyOf: (value: T) => string) {
    this.#keyOf = keyOf;
  }

  /** Where the value stands in `values`; it is added where it doesn't yet. */
  place(value: T): number {
    const key = this.#keyOf(value);
    const there = this.#places.get(key);
    if (there !== undefined) return there;
    this.#places.set(key, this.values.length);
    return this.values.push(value) - 1;
  }
}
