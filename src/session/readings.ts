import { type Reading, readingFrom } from './reading';
import { keyOf, samePlace, type Where, whereOf } from './where';

/** The part of the browser's session storage that is used here. */
export interface Area {
  get(keys: string | null): Promise<Record<string, unknown>>;
  set(items: Record<string, unknown>): Promise<void>;
  remove(keys: string | string[]): Promise<void>;
}

/** Runs one task at a time, across workers and pages: `navigator.locks` in a browser. */
export type Lock = <T>(task: () => Promise<T>) => Promise<T>;

/** A reading has 400 kB at most and the browser gives 10 MB: of more than these the oldest presses go first. */
const MOST_KEPT = 20;

/** What is known once a press has led somewhere. */
export type Outcome<R = Reading> = R extends Reading
  ? R['state'] extends 'reading'
    ? never
    : Omit<R, 'window' | 'tab' | 'number' | 'asOf'>
  : never;

/**
 * Readings by window and tab, in the browser's session storage, so that a worker may be killed at any time. All
 * changes go through one lock: two presses in a row never get the same number, and a late answer never lands.
 */
export class Readings {
  constructor(
    private readonly area: Area,
    private readonly lock: Lock,
  ) {}

  async get(where: Where): Promise<Reading | null> {
    const key = keyOf(where);
    return readingFrom((await this.area.get(key))[key]);
  }

  /** A new press: whatever stood there before is gone. */
  begin(where: Where, asOf: string): Promise<Reading> {
    return this.lock(async () => {
      const before = await this.get(where);
      const reading: Reading = { ...where, number: (before?.number ?? 0) + 1, asOf, state: 'reading' };
      await this.prune();
      await this.area.set({ [keyOf(where)]: reading });
      return reading;
    });
  }

  /**
   * The same document is read anew at its new address.
   * @returns null where a later press, or a closed tab, made that void
   */
  again(before: Reading, asOf: string): Promise<Reading | null> {
    return this.lock(async () => {
      const now = await this.get(before);
      if (now?.number !== before.number || now.state !== 'read') return null;
      const reading: Reading = { ...headOf(now), number: now.number + 1, asOf, state: 'reading' };
      await this.area.set({ [keyOf(now)]: reading });
      return reading;
    });
  }

  /** Presses of which nothing has become yet: where a worker has just begun, those that died with the one before. */
  underWay(): Promise<Reading[]> {
    return this.lock(async () => (await this.all()).filter(({ state }) => state === 'reading'));
  }

  /**
   * What became of a press, kept only while that press is the tab's last one.
   * @returns false where a later press, or a closed tab, made it void
   */
  finish(press: Reading, outcome: Outcome): Promise<boolean> {
    return this.lock(async () => {
      const now = await this.get(press);
      if (now?.number !== press.number || now.state !== 'reading') return false;
      await this.put({ ...headOf(now), ...outcome } as Reading);
      return true;
    });
  }

  /** The document is no longer the one that was read. */
  leave(reading: Reading): Promise<boolean> {
    return this.lock(async () => {
      const now = await this.get(reading);
      if (now?.number !== reading.number || now.state === 'left') return false;
      await this.area.set({ [keyOf(now)]: { ...headOf(now), state: 'left' } });
      return true;
    });
  }

  /** The tab was closed. */
  forget(where: Where): Promise<void> {
    return this.lock(() => this.area.remove(keyOf(where)));
  }

  /** The tab was dragged into another window, or the browser gave it another id. */
  move(from: number, to: Where): Promise<void> {
    return this.lock(async () => {
      for (const reading of await this.all()) {
        if (reading.tab !== from || samePlace(reading, to)) continue;
        await this.area.set({ [keyOf(to)]: { ...reading, ...to } });
        await this.area.remove(keyOf(reading));
      }
    });
  }

  private async put(reading: Reading): Promise<void> {
    try {
      await this.area.set({ [keyOf(reading)]: reading });
    } catch {
      // Session storage is small (10 MB in all): say so rather than show an older page's reading.
      const { window, tab, number, asOf } = reading;
      await this.area.set({ [keyOf(reading)]: { window, tab, number, asOf, state: 'failed', reason: 'storage' } });
    }
  }

  private async all(): Promise<Reading[]> {
    const items = await this.area.get(null);
    const found: Reading[] = [];
    for (const [key, value] of Object.entries(items)) {
      const reading = whereOf(key) && readingFrom(value);
      if (reading) found.push(reading);
    }
    return found;
  }

  private async prune(): Promise<void> {
    const full = (await this.all()).filter((reading) => reading.state === 'read');
    const surplus = full.length - MOST_KEPT;
    if (surplus <= 0) return;
    // Day and press number are all the age there is; which of one day's go first makes no difference to anyone.
    full.sort((a, b) => a.asOf.localeCompare(b.asOf) || a.number - b.number);
    await this.area.remove(full.slice(0, surplus).map(keyOf));
  }
}

function headOf({ window, tab, number, asOf }: Reading) {
  return { window, tab, number, asOf };
}
