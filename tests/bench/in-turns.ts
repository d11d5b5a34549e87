type Task = () => unknown;

/** Milliseconds that a task runs in each round: less than other programs leave it at a time. */
const ROUND = 3;

/**
 * Milliseconds for one run of each task: the quickest of many rounds in which they take turns. Whatever else the machine
 * does makes a round slower and never quicker, so the quickest is the least disturbed.
 */
export function inTurns<K extends string>(tasks: Record<K, Task>, rounds = 200): Record<K, number> {
  const names = Object.keys(tasks) as K[];
  const best = {} as Record<K, number>;
  const repeats = {} as Record<K, number>;
  for (const name of names) {
    best[name] = Number.POSITIVE_INFINITY;
    repeats[name] = repeatsOf(tasks[name]);
  }
  for (let round = 0; round < rounds; round++)
    for (const name of names) {
      const begun = performance.now();
      for (let i = 0; i < repeats[name]; i++) tasks[name]();
      best[name] = Math.min(best[name], (performance.now() - begun) / repeats[name]);
    }
  return best;
}

/** So often that a round takes its time, found while warming up. */
function repeatsOf(task: Task): number {
  const warmUp = 500;
  const end = performance.now() + warmUp;
  let runs = 0;
  while (performance.now() < end || runs < 3) {
    task();
    runs++;
  }
  return Math.max(1, Math.round((ROUND * runs) / warmUp));
}

/** The next of a list at every call, from the first again after the last. */
export function inCircle<T>(list: readonly T[]): () => T {
  let at = -1;
  return () => {
    at = (at + 1) % list.length;
    return list[at]!;
  };
}
