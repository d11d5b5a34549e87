import { setTimeout as sleep } from 'node:timers/promises';
import type { BrowserContext, CDPSession, Request } from 'playwright-core';
import { type Panel, panelOf } from './panel';
import { attachRaw, type RawTarget } from './raw-target';
import type { NetworkWatch, RequestBy } from './watch-network';

export interface SeenError {
  where: 'page' | 'panel' | 'extension-page' | 'worker';
  text: string;
}

/** Records what tabs and workers say and ask for; Playwright has objects for these. */
export function watchPages(
  context: BrowserContext,
  ours: string,
  errors: SeenError[],
  network: NetworkWatch | null,
): void {
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
    else network?.claim(request.url(), request.isNavigationRequest() ? 'page' : whereOf(askedFrom(request)));
  });
}

/** The address of the page that asks; of what a tab asks for before its frame is known, that of what is asked for. */
export function askedFrom(request: Pick<Request, 'frame' | 'url'>): string {
  try {
    return request.frame().url();
  } catch {
    return request.url();
  }
}

/** Attaches to each side panel as it opens. */
export async function watchPanels(
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
