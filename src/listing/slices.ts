// Long work as a generator: it yields where it may be interrupted, and does little between two yields.

/** How work shares a thread with others. */
export interface Pace {
  /** Milliseconds after which others are let through. What is done between two yields comes on top. */
  slice: number;
  /** A clock, in milliseconds. */
  now: () => number;
  /** Lets others through. */
  pause: () => Promise<unknown>;
}

/** Well below the 50 ms from which on a person notices a page that doesn’t answer (RAIL model; figure from memory): machines are busy. */
const SLICE = 12;

/** All of it without a pause. */
export function atOnce<T>(work: Generator<void, T>): T {
  let step = work.next();
  while (!step.done) step = work.next();
  return step.value;
}

/** All of it in slices. Throws what the work throws. */
export async function inSlices<T>(
  work: Generator<void, T>,
  { slice = SLICE, now = () => performance.now(), pause = letThrough }: Partial<Pace> = {},
): Promise<T> {
  let begun = now();
  for (let step = work.next(); ; step = work.next()) {
    if (step.done) return step.value;
    if (now() - begun < slice) continue;
    await pause();
    begun = now();
  }
}

type Yielding = { scheduler?: { yield?: () => Promise<void> } };

/** Where a browser can, so that this work goes on before what was asked for later; a timer is made to wait. */
const letThrough = (): Promise<unknown> =>
  (globalThis as Yielding).scheduler?.yield?.() ?? new Promise((resolve) => setTimeout(resolve));
