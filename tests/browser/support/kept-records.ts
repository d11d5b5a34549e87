import type { Tab } from '../../../src/cli/demo/driven';

/** All that is kept, by store, each record by its key; of keys, the public half. What can be made anew is left out. */
export type Records = Readonly<Record<string, Readonly<Record<string, Readonly<Record<string, unknown>>>>>>;

/** Read past our own code, which may hide or mend what is wrong. */
export function keptRecords(page: Tab): Promise<Records> {
  return page.evaluate(async () => {
    const db = await new Promise<IDBDatabase>((resolve) => {
      const opening = indexedDB.open('bedplate');
      opening.onsuccess = () => resolve(opening.result);
    });
    const names = [...db.objectStoreNames].filter((name) => name !== 'compiled');
    const work = db.transaction(names);
    const all = <T>(asking: IDBRequest<T>) =>
      new Promise<T>((resolve) => {
        asking.onsuccess = () => resolve(asking.result);
      });
    const read = await Promise.all(
      names.map(async (name) => {
        const store = work.objectStore(name);
        return [name, await all(store.getAllKeys()), await all(store.getAll())] as const;
      }),
    );
    db.close();
    const publicHalf = async (record: { keys?: CryptoKeyPair }) => {
      if (!record.keys) return record;
      const raw = new Uint8Array(await crypto.subtle.exportKey('raw', record.keys.publicKey));
      const bare = btoa(String.fromCharCode(...raw))
        .replace(/\+/g, '-')
        .replace(/\//g, '_')
        .replace(/=+$/, '');
      return { ...record, keys: bare };
    };
    const stores = read.map(async ([name, keys, records]) => {
      const entries = records.map(async (record, i) => [String(keys[i]), await publicHalf(record)] as const);
      return [name, Object.fromEntries(await Promise.all(entries))] as const;
    });
    return Object.fromEntries(await Promise.all(stores));
  });
}
