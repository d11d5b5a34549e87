import type { Tab } from '../../../src/cli/demo/driven';

// What takes all the space that a page's profile has, in a database of its own beside ours.

/** Fills the space until not even a thousand bytes find room. @returns how many bytes it took */
export function fillSpace(tab: Tab): Promise<number> {
  return tab.evaluate(async () => {
    // Opened each time: in Firefox a connection that has met the end of the space lets nothing be added.
    const put = (size: number) =>
      new Promise<boolean>((resolve) => {
        const opening = indexedDB.open('ballast', 1);
        opening.onupgradeneeded = () => opening.result.createObjectStore('all', { autoIncrement: true });
        opening.onerror = () => resolve(false);
        opening.onsuccess = () => {
          const db = opening.result;
          const work = db.transaction('all', 'readwrite');
          const ended = (kept: boolean) => {
            db.close();
            resolve(kept);
          };
          // By lot, for what is all the same takes no space.
          const bytes = new Uint8Array(size);
          for (let at = 0; at < size; at += 65_536) crypto.getRandomValues(bytes.subarray(at, at + 65_536));
          work.objectStore('all').put(bytes);
          work.oncomplete = () => ended(true);
          work.onabort = () => ended(false);
        };
      });
    let taken = 0;
    for (let size = 1_000_000; size >= 1000; size = Math.floor(size / 4)) while (await put(size)) taken += size;
    return taken;
  });
}

export function freeSpace(tab: Tab): Promise<void> {
  return tab.evaluate(
    () =>
      new Promise<void>((resolve) => {
        indexedDB.deleteDatabase('ballast').onsuccess = () => resolve();
      }),
  );
}
