import { writeFile } from 'node:fs/promises';
import { type Connection, evaluateIn } from './bidi';
import { clickIn, keepAsking, pressIn } from './bidi-hands';
import { goRoundTo } from './firefox-focus';
import type { InWindow } from './firefox-window';
import type { Panel } from './panel';

/**
 * The side bar of one window, where it shows the extension's panel. Firefox's WebDriver knows tabs only, so the side
 * bar is made known to it as if it were one: all its commands work there then, real input among them.
 * @returns the id of its browsing context, or null where the window shows no such panel
 */
export async function meetSidebar(inWindow: InWindow, begins: string): Promise<string | null> {
  return (await inWindow(
    (start: string) => {
      const found = document
        .querySelector<HTMLIFrameElement>('#sidebar')
        ?.contentDocument?.querySelector('#webext-panels-browser') as SidebarBrowser | null | undefined;
      if (!found?.currentURI?.spec.startsWith(start)) return null;
      const address = 'chrome://remote/content/shared/NavigableManager.sys.mjs';
      const { NavigableManager } = ChromeUtils.importESModule(address);
      const known = found.permanentKey !== undefined;
      found.permanentKey ??= {};
      const id = NavigableManager.getIdForBrowser(found);
      if (known) return id;
      const before = NavigableManager.getBrowserById;
      NavigableManager.getBrowserById = function (asked) {
        return asked === id && found.isConnected ? found : before.call(this, asked);
      };
      return id;
    },
    [begins],
  )) as string | null;
}

export function firefoxPanel(connection: Connection, context: string, inWindow: InWindow): Panel {
  let gone = false;
  const run = async (what: string | ((...args: never[]) => unknown), args: readonly unknown[] = []) => {
    try {
      return await evaluateIn(connection, context, what, args);
    } catch (error) {
      if (/no such frame/.test(String(error))) gone = true;
      throw error;
    }
  };
  const inBox = (what: string) =>
    inWindow(`(() => { const bar = document.getElementById('sidebar-box');
      const browser = document.getElementById('sidebar').contentDocument.getElementById('webext-panels-browser');
      ${what} })()`);

  const panel: Panel = {
    evaluate: async (what, ...args) => (await run(what as string, args)) as never,
    async waitFor(expression, timeout = 15_000) {
      if (await keepAsking(async () => (await run(`Boolean(${expression})`)) === true, timeout)) return;
      const shown = await panel.text().catch(String);
      throw new Error(`not in ${timeout} ms: ${expression}\nthe panel shows:\n${shown}`);
    },
    waitForSelector: (selector, timeout) =>
      panel.waitFor(`document.querySelector(${JSON.stringify(selector)})`, timeout),
    text: async () => (await run('document.body?.innerText ?? ""')) as string,
    click: (selector) => clickIn(connection, context, selector),
    async press(key, modifiers) {
      const comesBack =
        key === 'Tab' &&
        (await goRoundTo(
          () => run('document.hasFocus()'),
          async () => inWindow,
        ));
      if (!comesBack) await pressIn(connection, context, key, modifiers);
    },
    async setColourScheme(scheme) {
      await inBox(`browser.browsingContext.prefersColorSchemeOverride = ${JSON.stringify(scheme)};`);
    },
    async setWidth(width) {
      await inBox(`bar.style.width = ${JSON.stringify(width === null ? '' : `${width}px`)};`);
    },
    async screenshot(path) {
      const { result } = await connection.send('browsingContext.captureScreenshot', { context, origin: 'document' });
      await writeFile(path, Buffer.from((result as { data: string }).data, 'base64'));
    },
    closed: () => gone,
  };
  return panel;
}

/** As the browser's own window has them; nothing of this is public interface. */
interface SidebarBrowser extends Element {
  currentURI: { spec: string } | null;
  permanentKey?: object;
}
declare const ChromeUtils: {
  importESModule(address: string): {
    NavigableManager: {
      getIdForBrowser(browser: Element): string;
      getBrowserById(id: string): Element | null;
    };
  };
};
