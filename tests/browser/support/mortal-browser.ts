import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { join, resolve } from 'node:path';
import type { Page } from 'playwright-core';
import { openRoom, type Room, type RoomOptions } from './browser';

/** A Chromium that can be killed, and that starts again on the profile it left. */
export interface Mortal {
  /** The workbench's packs, in the browser that runs; one is started where none does. */
  bench(): Promise<Page>;
  /**
   * Waits until the browser's storage has written to its files so often since it was asked, or for so many milliseconds.
   * @returns how often it has
   */
  written(times: number, most: number): Promise<number>;
  /** Ends the browser's process at once, as a power cut or the machine's lack of memory would. */
  kill(): Promise<void>;
  /**
   * While none runs: takes the last bytes from what the browser's storage wrote last, as if it had been killed in the middle
   * of that write.
   */
  tear(bytes: number): void;
  /** While none runs: changes a byte of what the browser's storage wrote last, as a failing disk might. */
  damage(): void;
  close(): Promise<void>;
}

export function mortalBrowser(options: RoomOptions = {}): Mortal {
  mkdirSync('.test', { recursive: true });
  const profile = mkdtempSync(join(resolve('.test'), 'mortal-'));
  let room: Room | null = null;
  let process_: number | null = null;

  async function start(): Promise<Room> {
    const opened = await openRoom({ ...options, packs: false, profile });
    process_ = await processOf(opened);
    return opened;
  }
  /** To which the browser's storage adds each write. */
  function lastLog(): string {
    if (room) throw new Error('a browser runs');
    // Their names are numbers of one length.
    const logs = filesIn(profile).filter((file) => file.endsWith('.log'));
    const last = logs.sort().at(-1);
    if (!last) throw new Error('the browser’s storage has written nothing');
    return last;
  }

  return {
    async bench() {
      room ??= await start();
      const page = await room.browser.openTab(room.browser.addressOf('workbench.html'));
      await page.locator('[data-pack-id="trade"]').waitFor();
      return page;
    },
    async written(times, most) {
      const end = performance.now() + most;
      let [size, seen] = [bytesIn(profile), 0];
      while (seen < times && performance.now() < end) {
        // Looked at as often as this machine can: a write and the next one are a few milliseconds apart.
        await new Promise((done) => setImmediate(done));
        const now = bytesIn(profile);
        if (now !== size) seen += 1;
        size = now;
      }
      return seen;
    },
    async kill() {
      if (!room || process_ === null) throw new Error('no browser runs');
      const gone = new Promise((done) => room?.browser.context.once('close', done));
      process.kill(process_, 'SIGKILL');
      await gone;
      await room.close();
      room = null;
    },
    tear(bytes) {
      const log = lastLog();
      truncateSync(log, statSync(log).size - bytes);
    },
    damage() {
      const log = lastLog();
      const bytes = readFileSync(log);
      bytes[20]! ^= 1;
      writeFileSync(log, bytes);
    },
    async close() {
      await room?.close();
      rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
    },
  };
}

/** Of the extension's database, in Chromium's own files; what is kept there beside records is among them. */
function bytesIn(profile: string): number {
  // One may go while it is looked at.
  return filesIn(profile).reduce((all, file) => all + (statSync(file, { throwIfNoEntry: false })?.size ?? 0), 0);
}

function filesIn(profile: string): string[] {
  const folder = join(profile, 'Default/IndexedDB');
  const files = existsSync(folder) ? readdirSync(folder, { recursive: true, encoding: 'utf8' }) : [];
  return files.map((name) => join(folder, name));
}

/** The browser's own process: its children, our pages' among them, end with it. */
async function processOf({ browser }: Room): Promise<number> {
  const tools = await browser.context.browser()!.newBrowserCDPSession();
  const { processInfo } = await tools.send('SystemInfo.getProcessInfo');
  await tools.detach();
  const own = processInfo.find(({ type }) => type === 'browser');
  if (!own) throw new Error('the browser doesn’t tell its process');
  return own.id;
}
