import type { Area, Lock } from '../../../src/session/readings';

/** Session storage as the browser has it: values are copied in and out, and each call takes a turn of the event loop. */
export function fakeArea(capacity = Number.POSITIVE_INFINITY): Area & { items: Map<string, string> } {
  const items = new Map<string, string>();
  const turn = () => new Promise<void>((resolve) => setImmediate(resolve));
  return {
    items,
    async get(key) {
      await turn();
      const wanted = [...items].filter(([name]) => key === null || name === key);
      return Object.fromEntries(wanted.map(([name, text]) => [name, JSON.parse(text)]));
    },
    async set(values) {
      await turn();
      for (const [name, value] of Object.entries(values)) {
        const text = JSON.stringify(value);
        if (text.length > capacity) throw new Error('Session storage quota bytes exceeded. Values were not stored.');
        items.set(name, text);
      }
    },
    async remove(keys) {
      await turn();
      for (const key of [keys].flat()) items.delete(key);
    },
  };
}

/** One task after the other, as `navigator.locks` does it. */
export function fakeLock(): Lock {
  let last: Promise<unknown> = Promise.resolve();
  return (task) => {
    const mine = last.then(task, task);
    last = mine.catch(() => {});
    return mine;
  };
}
