import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, mkdtempSync, rmSync, statfsSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { type BrowserContext, type CDPSession, chromium, type Page, type Worker } from 'playwright-core';
import type { Driven } from './driven';
import type { Panel } from './panel';
import { type NetworkWatch, OWN_SERVICE_FLAGS, watchNetwork } from './watch-network';
import { type SeenError, watchPages, watchPanels } from './watch-targets';

export interface DriveOptions {
  /** The browser's executable, see findBrowser. */
  executable: string;
  /** The folder of the built extension. */
  extension: string;
  /** Left out: without a window. */
  headed?: boolean;
  /** Leads all traffic through a proxy that records it and lets nothing leave this machine. */
  watch?: boolean;
  /** Size of the window in CSS pixels. */
  window?: { width: number; height: number };
  /** Allows the extension in private windows from the start; Firefox's driver does that when it opens one. */
  privately?: boolean;
  /** Takes the certificate of any host: those of tests are vouched for by nobody. */
  anyCertificate?: boolean;
  /**
   * Match patterns of hosts for which the user would say yes when asked. Firefox's driver says yes to all, as no question
   * of the browser's own can be answered in either.
   */
  grants?: readonly string[];
  /** How many bytes there are for all that pages keep; left out: as many as on any machine like this. */
  space?: number;
  /** A folder for the profile, which outlives the browser and may have been another one's; left out: one for this time. */
  profile?: string;
}

/** A real Chromium with the extension loaded. */
export interface Chromium extends Driven {
  context: BrowserContext;
  extensionId: string;
  /** The extension's service worker as it is now; it may stop and come back as another object. */
  worker(): Worker | null;
  openTab(url: string): Promise<Page>;
  openWindow(url: string): Promise<Page>;
  pressToolbarButton(page: Page): Promise<void>;
}

/**
 * What a user does in the browser's own page about extensions, where it would load the extension anew, which a browser
 * without a window doesn't outlive; and hosts for which the user has said yes before, which a browser doesn't ask again.
 */
function settle(profile: string, extension: string, { privately = false, grants = [] }: DriveOptions): void {
  if (existsSync(join(profile, 'Default'))) return;
  mkdirSync(join(profile, 'Default'));
  const hosts = { api: [], explicit_host: grants, manifest_permissions: [], scriptable_host: [] };
  const granted = grants.length > 0 ? { runtime_granted_permissions: hosts } : {};
  const settings = { [idOf(extension)]: { incognito: privately, ...granted } };
  writeFileSync(join(profile, 'Default/Preferences'), JSON.stringify({ extensions: { settings } }));
}

/** The id of an unpacked extension: Chromium makes it of its folder's path, in letters from a to p. */
function idOf(folder: string): string {
  const hash = createHash('sha256').update(folder).digest('hex').slice(0, 32);
  return [...hash].map((digit) => String.fromCharCode(97 + Number.parseInt(digit, 16))).join('');
}

/**
 * What a page of the tools may set (Storage.overrideQuotaForOrigin) reaches no extension: only a share of the disk can be
 * set, as the browser starts.
 */
function shareOfDisk(space: number): string {
  const disk = statfsSync('.test');
  return (space / (disk.blocks * disk.bsize)).toFixed(18);
}

/** Both extension switches are needed: one loads it, the other keeps it from being disabled again. */
function flags(options: DriveOptions): string[] {
  const { extension, headed, watch, window, space, anyCertificate } = options;
  return [
    ...(headed ? [] : ['--headless=new', '--disable-gpu']),
    // Only root needs it, and only a root's Chromium would not start without it.
    ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
    ...(watch ? OWN_SERVICE_FLAGS : []),
    ...(window ? [`--window-size=${window.width},${window.height}`] : []),
    ...(anyCertificate ? ['--ignore-certificate-errors'] : []),
    '--disable-quic',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
    `--disable-extensions-except=${extension}`,
    `--load-extension=${extension}`,
    ...(space === undefined ? [] : [`--enable-features=StorageQuotaSettings:PoolSizeRatio/${shareOfDisk(space)}`]),
  ];
}

/**
 * Starts Chromium with the extension, on a profile of its own that is removed at the end, or on a given one.
 * @throws Error where the browser doesn't start or doesn't take the extension.
 */
export async function driveChromium(options: DriveOptions): Promise<Chromium> {
  const extension = resolve(options.extension);
  // In the project's own folder: a sandboxed package of Chromium doesn't see the machine's /tmp.
  const scratch = resolve('.test');
  mkdirSync(scratch, { recursive: true });
  const profile = options.profile ?? mkdtempSync(join(scratch, 'profile-'));
  const network = options.watch ? await watchNetwork() : null;
  const tidy = async () => {
    await network?.close();
    if (options.profile === undefined)
      rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
  };
  if (options.privately || options.grants) settle(profile, extension, options);
  try {
    const context = await chromium.launchPersistentContext(profile, {
      executablePath: options.executable,
      headless: false, // the flags say it: Playwright's own way starts a browser without extensions
      chromiumSandbox: process.getuid?.() !== 0,
      viewport: null,
      // A window is closed by whoever opened it, on Ctrl+C as well; without one Playwright sees to it.
      handleSIGINT: !options.headed,
      handleSIGTERM: !options.headed,
      args: flags({ ...options, extension }),
      ...(network ? { proxy: network.proxy } : {}),
    });
    return await drive(context, network, tidy);
  } catch (error) {
    await tidy();
    const line = (error instanceof Error ? error.message : String(error)).split('\n')[0];
    throw new Error(`${options.executable}: ${line}`, { cause: error });
  }
}

async function drive(
  context: BrowserContext,
  network: NetworkWatch | null,
  tidy: () => Promise<void>,
): Promise<Chromium> {
  const first = context.serviceWorkers()[0] ?? (await context.waitForEvent('serviceworker', { timeout: 20_000 }));
  const extensionId = new URL(first.url()).host;
  const ours = `chrome-extension://${extensionId}/`;
  const browser = context.browser();
  if (!browser) throw new Error('the browser has closed');
  const cdp = await browser.newBrowserCDPSession();
  const errors: SeenError[] = [];
  watchPages(context, ours, errors, network);
  const panels = await watchPanels(cdp, ours, errors, network);

  const worker = () => context.serviceWorkers().find((each) => each.url().startsWith(ours)) ?? null;
  /** The tabs that were handed out so far. */
  const met = new WeakSet<Page>();
  /** The window of the last press, by the id that the extension knows it by as well. */
  let pressedIn: number | null = null;

  return {
    name: 'chromium',
    context,
    extensionId,
    seenErrors: async () => errors,
    worker,
    addressOf: (page) => ours + page,
    async openTab(url) {
      const page = await context.newPage();
      met.add(page);
      await page.goto(url);
      return page;
    },
    async openWindow(url) {
      const opened = context.waitForEvent('page');
      await cdp.send('Target.createTarget', { url: 'about:blank', newWindow: true });
      const page = await opened;
      met.add(page);
      await page.goto(url);
      return page;
    },
    async tabAt(url) {
      const end = Date.now() + 15_000;
      for (;;) {
        const found = context.pages().find((page) => page.url() === url && !met.has(page));
        if (found) {
          met.add(found);
          return found;
        }
        if (Date.now() > end) throw new Error(`no tab shows ${url}`);
        await sleep(50);
      }
    },
    async copied() {
      await context.grantPermissions(['clipboard-read']);
      // A page reads the clipboard only where it has the focus.
      const page = await context.newPage();
      await page.goto(`${ours}workbench.html`);
      const text = await page.evaluate(() => navigator.clipboard.readText());
      await page.close();
      return text;
    },
    async openPrivately(url) {
      const awake = worker();
      if (!awake) throw new Error('the worker is asleep');
      const opened = context.waitForEvent('page');
      await awake.evaluate((address) => chrome.windows.create({ incognito: true, url: address }), url);
      const page = await opened;
      met.add(page);
      await page.waitForLoadState();
      return page;
    },
    async pressToolbarButton(page) {
      await page.bringToFront();
      const targetId = await tabOf(cdp, page);
      pressedIn = (await cdp.send('Browser.getWindowForTarget', { targetId })).windowId;
      await cdp.send('Extensions.triggerAction' as never, { id: extensionId, targetId } as never);
    },
    async pressSelectionMenu(page) {
      const awake = worker();
      if (!awake) throw new Error('the worker is asleep');
      const text = await page.evaluate(() => String(getSelection()));
      // No driver reaches this browser's menus: that the item is there is asked, and what a press tells is told.
      await awake.evaluate(async (selectionText) => {
        await chrome.contextMenus.update('ask-selection', { visible: true });
        const { onClicked } = chrome.contextMenus as unknown as { onClicked: { dispatch(press: object): void } };
        onClicked.dispatch({ menuItemId: 'ask-selection', selectionText, editable: false });
      }, text);
    },
    async openPanel(timeout = 15_000) {
      const end = Date.now() + timeout;
      for (;;) {
        const panel = await panelIn(
          pressedIn,
          panels.filter((each) => !each.closed()),
        );
        if (panel) return panel;
        if (Date.now() > end) throw new Error(`no side panel opened in ${timeout} ms`);
        await sleep(50);
      }
    },
    async markInFront() {
      const awake = worker();
      if (!awake) throw new Error('the worker is asleep');
      return awake.evaluate(async () => {
        const [tab] = await chrome.tabs.query({ active: true, lastFocusedWindow: true });
        return chrome.action.getBadgeText(tab?.id === undefined ? {} : { tabId: tab.id });
      });
    },
    requests: () => network?.requests() ?? [],
    async stopWorker() {
      const page = await context.newPage();
      await page.goto(`${ours}manifest.json`);
      const session = await context.newCDPSession(page);
      await session.send('ServiceWorker.enable');
      await session.send('ServiceWorker.stopAllWorkers');
      await page.close();
    },
    async close() {
      await context.close();
      await tidy();
    },
  };
}

/** The panel that is open in a window, if any. */
async function panelIn(windowId: number | null, open: Panel[]): Promise<Panel | undefined> {
  if (windowId === null) return open.at(-1);
  for (const panel of open) {
    const window = await panel.evaluate(() => chrome.windows.getCurrent()).catch(() => null);
    if (window?.id === windowId) return panel;
  }
  return undefined;
}

/** As the extension's own pages have it. */
declare const chrome: typeof import('wxt/browser').browser;

/** The 'tab' target that holds a page: only a filter that leaves nothing out shows those. */
async function tabOf(cdp: CDPSession, page: Page): Promise<string> {
  const session = await page.context().newCDPSession(page);
  const { targetInfo } = await session.send('Target.getTargetInfo');
  await session.detach();
  const { targetInfos } = await cdp.send('Target.getTargets', { filter: [{}] });
  const tabs = targetInfos.filter((info) => info.type === 'tab' && info.url === targetInfo.url);
  if (tabs.length <= 1) {
    if (!tabs[0]) throw new Error(`no tab shows ${targetInfo.url}`);
    return tabs[0].targetId;
  }
  // Several tabs at one address: the one in front is meant, it was just brought there.
  const active = tabs.find((info) => (info as { embedderData?: { tabActive?: boolean } }).embedderData?.tabActive);
  if (!active) throw new Error(`${tabs.length} tabs show ${targetInfo.url}, and none is known to be in front`);
  return active.targetId;
}
