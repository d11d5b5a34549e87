import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import type { Driven, Tab } from '../../src/cli/demo/driven';
import type { Panel } from '../../src/cli/demo/panel';
import type { SeenError } from '../../src/cli/demo/watch-targets';

/** Presses the button on a tab and waits until the panel shows one of these screens for it. */
export async function press(browser: Driven, page: Tab, ...screens: string[]): Promise<Panel> {
  await browser.pressToolbarButton(page);
  const panel = await browser.openPanel();
  await waitForScreen(panel, ...screens);
  return panel;
}

export function waitForScreen(panel: Panel, ...screens: string[]): Promise<void> {
  const selector = screens.map((screen) => `[data-screen="${screen}"]`).join(', ');
  return panel.waitForSelector(selector);
}

/** Waits until something holds. @throws Error that says what was waited for */
export async function until(what: string, holds: () => Promise<boolean>, timeout = 10_000): Promise<void> {
  const end = Date.now() + timeout;
  while (!(await holds())) {
    if (Date.now() > end) throw new Error(`not in ${timeout} ms: ${what}`);
    await sleep(50);
  }
}

/** Errors of our own pages and worker; what a market page's own console says is not ours. */
export async function seenErrors(browser: Driven): Promise<SeenError[]> {
  return (await browser.seenErrors()).filter(({ where }) => where !== 'page');
}

/** Requests that neither a page's own loading nor the browser's own services made. */
export function ourRequests(browser: Driven) {
  return browser.requests().filter(({ by }) => by !== 'page' && by !== 'browser');
}

/** A folder of pages made for one test: path -> content. */
export function folderOf(files: Record<string, string | Uint8Array>): string {
  mkdirSync('.test', { recursive: true });
  const folder = mkdtempSync(join(resolve('.test'), 'pages-'));
  for (const [path, content] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), content);
  }
  return folder;
}
