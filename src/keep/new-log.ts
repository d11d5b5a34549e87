const PASSING = 'bedplate-passing';

/**
 * Has the browser write its storage on into a new file, by making a database and deleting it at once.
 *
 * Chromium keeps databases in LevelDB, adding each change to a log. Killed in the middle of a write, it leaves half a record
 * at the log's end; the next start leaves that out, but goes on writing behind it, and whenever the log is read again the
 * half record in its middle counts as damage, for which everything that is kept here is deleted (`reuse_logs` in
 * LevelDB's db_impl.cc; `dataLoss: total`, "checksum mismatch"). A deleted database is compacted away, and what
 * the log holds goes into a table of its own first.
 * @returns once it is done, or where nothing can be kept here
 */
export async function beginNewLog(databases: IDBFactory = indexedDB): Promise<void> {
  try {
    const made = databases.open(PASSING);
    await done(made);
    made.result.close();
    await done(databases.deleteDatabase(PASSING));
  } catch {
    // Whoever keeps something is told what is wrong.
  }
}

function done(asked: IDBOpenDBRequest): Promise<unknown> {
  return new Promise((resolve, reject) => {
    asked.onsuccess = resolve;
    asked.onerror = () => reject(asked.error);
  });
}
