import type { Benchmark } from './benchmark';
import { general, ours, type Searchable, type Table, tableOf } from './serial-table';

/** Made when first asked for: a million runs take a while, and not every measurement wants them. */
function later<T>(make: () => T): () => T {
  let made: { value: T } | null = null;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

function askAll(table: () => Table, index: () => Searchable): () => number {
  return () => {
    let found = 0;
    for (const serial of table().asked) found += index().find(serial).length;
    return found;
  };
}

/** `tsx tests/bench/serials.ts` prints the ratios of these, measured in turns. */
export const benchmarks: Benchmark[] = [100_000, 1_000_000].flatMap((count) => {
  const table = later(() => tableOf(count));
  const size = `among ${count.toLocaleString('en')} runs`;
  return [
    {
      name: `serials: 10,000 numbers ${size}`,
      run: askAll(
        table,
        later(() => ours(table())),
      ),
    },
    {
      name: `serials: 10,000 numbers ${size}, by a general interval tree`,
      run: askAll(
        table,
        later(() => general(table())),
      ),
    },
  ];
});
