import { randomUUID } from 'node:crypto';
import { mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { type Browser, launch } from 'puppeteer-core';
import type { Connection } from './bidi';
import { keepAsking } from './bidi-hands';
import type { DriveOptions } from './drive-chromium';
import type { Driven } from './driven';
import { pressMenuItem } from './firefox-menu';
import { firefoxPanel, meetSidebar } from './firefox-panel';
import { type FirefoxTab, firefoxTab } from './firefox-tab';
import {
  badgeOf,
  type InWindow,
  openPrivateWindow,
  pressButton,
  stopBackground,
  textOnClipboard,
  windowOf,
} from './firefox-window';
import type { Panel } from './panel';
import { consoleErrors, watchContexts } from './watch-firefox';
import { type NetworkWatch, watchNetwork } from './watch-network';

/**
 * Starts Firefox with the extension, on a profile of its own that is removed at the end.
 * @throws Error where the browser doesn't start or doesn't take the extension.
 */
export async function driveFirefox(options: DriveOptions): Promise<Driven> {
  const extension = resolve(options.extension);
  const manifest = JSON.parse(readFileSync(join(extension, 'manifest.json'), 'utf8'));
  const id = manifest.browser_specific_settings.gecko.id as string;
  // The address of our pages is drawn by lot for each profile; here it has to be known.
  const host = randomUUID();
  mkdirSync('.test', { recursive: true });
  const profile = mkdtempSync(join(resolve('.test'), 'profile-'));
  const network = options.watch ? await watchNetwork() : null;
  const tidy = async () => {
    await network?.close();
    rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
  };
  try {
    const { width, height } = options.window ?? { width: 1280, height: 800 };
    const browser = await launch({
      browser: 'firefox',
      executablePath: options.executable,
      headless: !options.headed,
      userDataDir: profile,
      defaultViewport: null,
      acceptInsecureCerts: options.anyCertificate ?? false,
      // Without it WebDriver reaches neither our own pages nor the tool bar.
      args: ['--remote-allow-system-access', `--width=${width}`, `--height=${height}`],
      extraPrefsFirefox: {
        ...PREFERENCES,
        ...uuids(id, host),
        ...(network ? through(network) : {}),
        ...spaceOf(options),
      },
    });
    return await drive(browser, extension, id, `moz-extension://${host}/`, network, tidy);
  } catch (error) {
    await tidy();
    const line = (error instanceof Error ? error.message : String(error)).split('\n')[0];
    throw new Error(`${options.executable}: ${line}`, { cause: error });
  }
}

const PREFERENCES = {
  'extensions.webextOptionalPermissionPrompts': false,
  // The side bar opens at its end, whatever is still moving on a slow machine.
  'ui.prefersReducedMotion': 1,
};
const uuids = (id: string, host: string) => ({ 'extensions.webextensions.uuids': JSON.stringify({ [id]: host }) });

/** In thousands of bytes, as the preference has it. */
const spaceOf = ({ space }: DriveOptions) =>
  space === undefined ? {} : { 'dom.quotaManager.temporaryStorage.fixedLimit': Math.ceil(space / 1024) };

function through(network: NetworkWatch) {
  const { hostname, port } = new URL(network.proxy.server);
  const kinds = ['http', 'ssl'].flatMap((kind) => [
    [`network.proxy.${kind}`, hostname],
    [`network.proxy.${kind}_port`, Number(port)],
  ]);
  return {
    ...Object.fromEntries(kinds),
    'network.proxy.type': 1,
    'network.proxy.no_proxies_on': '',
    'network.proxy.allow_hijacking_localhost': true,
  };
}

async function drive(
  browser: Browser,
  extension: string,
  id: string,
  ours: string,
  network: NetworkWatch | null,
  tidy: () => Promise<void>,
): Promise<Driven> {
  const connection = (browser as Browser & { connection: Connection }).connection;
  const watch = watchContexts(connection, ours, network);
  await browser.installExtension(extension);
  const panels = new Map<string, Panel>();

  /** The tabs that were handed out so far. */
  const met = new Set<string>();
  const meet = (context: string): FirefoxTab => {
    met.add(context);
    return firefoxTab(connection, context, ours, watch.urlOf);
  };
  const create = async (type: 'tab' | 'window', url: string): Promise<FirefoxTab> => {
    const { result } = await connection.send('browsingContext.create', { type });
    const tab = meet((result as { context: string }).context);
    await tab.goto(url);
    front = tab;
    return tab;
  };
  /** The tab that was last opened or brought to the front here: its window is the one that is looked at. */
  let front: FirefoxTab | null = null;
  const window = async (): Promise<InWindow> => {
    const { result } = await connection.send('browsingContext.getTree', {});
    const tabs = (result as { contexts: { context: string }[] }).contexts.map(({ context }) => context);
    const shown = front && tabs.includes(front.context) ? front.context : tabs[0];
    if (shown === undefined) throw new Error('no tab is open');
    return windowOf(connection, shown);
  };
  const tabAt = async (url: string): Promise<FirefoxTab> => {
    let found: string | undefined;
    const opened = async () => {
      const { result } = await connection.send('browsingContext.getTree', {});
      const tabs = (result as { contexts: { context: string; url: string }[] }).contexts;
      found = tabs.find((each) => each.url === url && !met.has(each.context))?.context;
      return found !== undefined;
    };
    if (!(await keepAsking(opened, 15_000)) || found === undefined) throw new Error(`no tab shows ${url}`);
    front = meet(found);
    return front;
  };

  return {
    name: 'firefox',
    addressOf: (page) => ours + page,
    openTab: (url) => create('tab', url),
    openWindow: (url) => create('window', url),
    tabAt,
    copied: async () => textOnClipboard(await window()),
    async openPrivately(url) {
      await openPrivateWindow(await window(), id, url);
      return tabAt(url);
    },
    async pressToolbarButton(tab) {
      await tab.bringToFront();
      front = tab as FirefoxTab;
      await pressButton(await window(), id);
    },
    async pressSelectionMenu(tab) {
      await tab.bringToFront();
      front = tab as FirefoxTab;
      await pressMenuItem(await window(), id);
    },
    async openPanel(timeout = 15_000) {
      const inWindow = await window();
      let found: string | null = null;
      const opened = async () => {
        found = await meetSidebar(inWindow, ours);
        return found !== null;
      };
      if (!(await keepAsking(opened, timeout)) || found === null)
        throw new Error(`no side bar opened in ${timeout} ms`);
      const panel = panels.get(found) ?? firefoxPanel(connection, found, inWindow);
      watch.isPanel(found);
      panels.set(found, panel);
      return panel;
    },
    markInFront: async () => badgeOf(await window(), id),
    seenErrors: async () => [...watch.errors, ...(await consoleErrors(await window(), ours))],
    requests: () => network?.requests() ?? [],
    stopWorker: async () => stopBackground(await window(), id),
    async close() {
      await browser.close();
      await tidy();
    },
  };
}
