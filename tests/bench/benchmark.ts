/** One thing whose time is worth knowing. Files named *.bench.ts export a list of these as `benchmarks`. */
export interface Benchmark {
  /** What runs, with its size: "compile a pack of 100,000 serial runs". */
  name: string;
  run: () => unknown;
}

export interface Timing {
  runs: number;
  /** Milliseconds. */
  median: number;
  p95: number;
}

/** Runs it for about `budget` milliseconds, five times at least, after a warm-up of a fifth of that. */
export async function time(benchmark: Benchmark, budget: number): Promise<Timing> {
  const spend = async (milliseconds: number, least: number) => {
    const taken: number[] = [];
    const end = performance.now() + milliseconds;
    while (taken.length < least || performance.now() < end) {
      const begun = performance.now();
      await benchmark.run();
      taken.push(performance.now() - begun);
    }
    return taken.sort((a, b) => a - b);
  };
  await spend(budget / 5, 1);
  const taken = await spend(budget, 5);
  const at = (share: number) => taken[Math.min(taken.length - 1, Math.floor(taken.length * share))] ?? Number.NaN;
  return { runs: taken.length, median: at(0.5), p95: at(0.95) };
}
