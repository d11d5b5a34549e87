import { type IDBPDatabase, openDB } from 'idb';
import { migrations } from './migrations';
import type { Schema } from './schema';
import { type Kept, troubleOf } from './trouble';

export type Database = IDBPDatabase<Schema>;

/** Thrown inside this folder only, where an older version that is still open keeps us from opening. */
class BlockedError extends Error {
  override name = 'BlockedError';
}

/**
 * Milliseconds after which an opening of which nothing is heard counts as blocked. A browser tells only the first one
 * that it is; those behind it in its queue would wait as long as the page that blocks them is open.
 */
const PATIENCE = 15_000;

/**
 * Opens the one database of this browser profile, bringing it up to the newest version first. It is closed as soon as
 * another of our pages needs a newer version, so that an update is never held up by a forgotten tab.
 * @param name another name than the usual one, and `patience` another time to wait: for tests
 */
export async function openKeep(name = 'bedplate', patience = PATIENCE): Promise<Kept<Database>> {
  try {
    return { ok: true, value: await opened(name, patience) };
  } catch (error) {
    return { ok: false, trouble: troubleOf(error) };
  }
}

function opened(name: string, patience: number): Promise<Database> {
  return new Promise((resolve, reject) => {
    let refused = false;
    let wrong: unknown;
    const refuse = () => {
      refused = true;
      reject(new BlockedError());
    };
    const waiting = setTimeout(refuse, patience);
    const opening = openDB<Schema>(name, migrations.length, {
      async upgrade(db, from, _to, change) {
        clearTimeout(waiting);
        try {
          for (const migrate of migrations.slice(from)) await migrate(db, change);
        } catch (error) {
          // Unless it is told so, the browser would take a half-done upgrade for a whole one.
          wrong = error;
          abort(change);
        }
      },
      blocked: refuse,
      blocking(_current, _blocked, event) {
        (event.target as IDBDatabase).close();
      },
    });
    opening.then(
      (db) => {
        clearTimeout(waiting);
        // Told "blocked" already: nobody waits for this connection any more, and left open it would block others.
        if (refused) db.close();
        else resolve(db);
      },
      (error) => {
        clearTimeout(waiting);
        reject(wrong ?? error);
      },
    );
  });
}

function abort(change: { abort(): void; done: Promise<void> }): void {
  change.done.catch(() => {});
  try {
    change.abort();
  } catch {
    // It has ended already.
  }
}
