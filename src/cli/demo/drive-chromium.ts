import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { type BrowserContext, type CDPSession, chromium, type Page, type Worker } from 'playwright-core';
import { type Panel, panelOf } from './panel';
import { attachRaw, type RawTarget } from './raw-target';
import { type NetworkWatch, OWN_SERVICE_FLAGS, type RequestBy, type SeenRequest, watchNetwork } from './watch-network';

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
}

export interface SeenError {
  where: 'page' | 'panel' | 'extension-page' | 'worker';
  text: string;
}

/** A real Chromium with the extension loaded. */
export interface Chromium {
  context: BrowserContext;
  extensionId: string;
  /** The extension's service worker as it is now; it may stop and come back as another object. */
  worker(): Worker | null;
  /** The address of one of the extension's own pages. */
  addressOf(page: string): string;
  /** A new tab at that address. */
  openTab(url: string): Promise<Page>;
  /** The press of the toolbar button on that tab, with all that a real press grants. */
  pressToolbarButton(page: Page): Promise<void>;
  /**
   * The side panel that is open, in the window if several are; waits for one to open.
   * @throws Error where none opens in `timeout` milliseconds.
   */
  openPanel(timeout?: number): Promise<Panel>;
  /** Errors on consoles, uncaught exceptions and violations of content security policies, so far. */
  errors: readonly SeenError[];
  /** What left the browser so far; empty unless `watch`. */
  requests(): SeenRequest[];
  /** Stops the service worker, as the browser does with an idle one. */
  stopWorker(): Promise<void>;
  close(): Promise<void>;
}

/** Both extension switches are needed: one loads it, the other keeps it from being disabled again. */
function flags(options: DriveOptions): string[] {
  const { extension, headed, watch, window } = options;
  return [
    ...(headed ? [] : ['--headless=new', '--disable-gpu']),
    // Only root needs it, and only a root's Chromium would not start without it.
    ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
    ...(watch ? OWN_SERVICE_FLAGS : []),
    ...(window ? [`--window-size=${window.width},${window.height}`] : []),
    '--disable-quic',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
    `--disable-extensions-except=${extension}`,
    `--load-extension=${extension}`,
  ];
}

/**
 * Starts Chromium with the extension, on a profile of its own that is removed at the end.
 * @throws Error where the browser doesn't start or doesn't take the extension.
 */
export async function driveChromium(options: DriveOptions): Promise<Chromium> {
  const extension = resolve(options.extension);
  // In the project's own folder: a sandboxed package of Chromium doesn't see the machine's /tmp.
  const scratch = resolve('.test');
  mkdirSync(scratch, { recursive: true });
  const profile = mkdtempSync(join(scratch, 'profile-'));
  const network = options.watch ? await watchNetwork() : null;
  const tidy = async () => {
    await network?.close();
    rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
  };
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

  return {
    context,
    extensionId,
    errors,
    worker: () => context.serviceWorkers().find((worker) => worker.url().startsWith(ours)) ?? null,
    addressOf: (page) => ours + page,
    async openTab(url) {
      const page = await context.newPage();
      await page.goto(url);
      return page;
    },
    async pressToolbarButton(page) {
      await page.bringToFront();
      await cdp.send(
        'Extensions.triggerAction' as never,
        { id: extensionId, targetId: await tabOf(cdp, page) } as never,
      );
    },
    async openPanel(timeout = 15_000) {
      const end = Date.now() + timeout;
      for (;;) {
        const panel = panels.findLast((each) => !each.closed());
        if (panel) return panel;
        if (Date.now() > end) throw new Error(`no side panel opened in ${timeout} ms`);
        await sleep(50);
      }
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

/** Records what tabs and workers say and ask for; Playwright has objects for these. */
function watchPages(context: BrowserContext, ours: string, errors: SeenError[], network: NetworkWatch | null): void {
  const whereOf = (url: string) => (url.startsWith(ours) ? 'extension-page' : 'page');
  context.on('console', (message) => {
    if (message.type() !== 'error') return;
    const where = message.worker() ? 'worker' : whereOf(message.page()?.url() ?? message.location().url);
    errors.push({ where, text: message.text() });
  });
  context.on('weberror', (error) => {
    errors.push({ where: whereOf(error.page()?.url() ?? ''), text: String(error.error()) });
  });
  context.on('request', (request) => {
    const worker = request.serviceWorker();
    if (worker) network?.claim(request.url(), worker.url().startsWith(ours) ? 'worker' : 'page');
    // A navigation is the tab's own, whatever page stood there before.
    else network?.claim(request.url(), request.isNavigationRequest() ? 'page' : whereOf(request.frame().url()));
  });
}

/** Attaches to each side panel as it opens. */
async function watchPanels(
  cdp: CDPSession,
  ours: string,
  errors: SeenError[],
  network: NetworkWatch | null,
): Promise<Panel[]> {
  const panels: Panel[] = [];
  const known = new Set<string>();
  const meet = async (info: { targetId: string; type: string; url: string; attached: boolean }) => {
    if (info.type !== 'page' || !info.url.startsWith(`${ours}sidepanel.html`)) return;
    if (known.has(info.targetId)) return;
    known.add(info.targetId);
    const target = await attachRaw(cdp, info.targetId);
    if (await isTab(target)) {
      await target.detach();
      return;
    }
    const claim = (by: RequestBy) => (event: { request: { url: string } }) => network?.claim(event.request.url, by);
    const note = (text: string | undefined) => errors.push({ where: 'panel', text: text ?? '' });
    target.on('Network.requestWillBeSent', claim('panel'));
    target.on('Runtime.exceptionThrown', (event: ExceptionThrown) =>
      note(event.exceptionDetails.exception?.description ?? event.exceptionDetails.text),
    );
    target.on('Runtime.consoleAPICalled', (event: ConsoleCalled) => {
      if (event.type === 'error' || event.type === 'assert') {
        note(event.args.map((each) => each.value ?? each.description ?? '').join(' '));
      }
    });
    target.on('Log.entryAdded', (event: { entry: { level: string; text: string } }) => {
      if (event.entry.level === 'error') note(event.entry.text);
    });
    for (const domain of ['Runtime', 'Log', 'Network', 'Page']) await target.send(`${domain}.enable`);
    panels.push(panelOf(target));
  };
  const onTarget = (event: { targetInfo: Parameters<typeof meet>[0] }) => void meet(event.targetInfo).catch(() => {});
  cdp.on('Target.targetCreated', onTarget);
  cdp.on('Target.targetInfoChanged', onTarget);
  await cdp.send('Target.setDiscoverTargets', { discover: true });
  return panels;
}

/** The panel's page may be open in a tab as well; only a tab knows itself as one. */
async function isTab(target: RawTarget): Promise<boolean> {
  for (let attempt = 0; attempt < 40; attempt += 1) {
    const answer = (await target.send('Runtime.evaluate', {
      expression: 'chrome.tabs.getCurrent().then((tab) => tab ? "tab" : "panel")',
      awaitPromise: true,
      returnByValue: true,
    })) as { result: { value?: unknown } };
    if (answer.result.value === 'tab' || answer.result.value === 'panel') return answer.result.value === 'tab';
    await sleep(50); // the page has not begun yet
  }
  throw new Error('the page does not answer');
}

interface ExceptionThrown {
  exceptionDetails: { text: string; exception?: { description?: string } };
}
interface ConsoleCalled {
  type: string;
  args: { value?: unknown; description?: string }[];
}
