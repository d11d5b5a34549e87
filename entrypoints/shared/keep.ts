import { type Database, openKeep } from '../../src/keep/open';
import type { Kept } from '../../src/keep/trouble';

/** Runs one piece of work on this browser's database and closes it: no page keeps it open while it only shows. */
export async function withKeep<T>(work: (db: Database) => Promise<Kept<T>>): Promise<Kept<T>> {
  const keep = await openKeep();
  if (!keep.ok) return keep;
  try {
    return await work(keep.value);
  } finally {
    keep.value.close();
  }
}
