import { writeFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { type Connection, evaluateIn } from './bidi';
import { clickIn, keepAsking, pressIn, typeIn } from './bidi-hands';
import type { Tab } from './driven';
import { goRoundTo } from './firefox-focus';
import { setTabScheme, windowOf } from './firefox-window';

const PATIENCE = 15_000;

/** A tab of Firefox, by the id of its browsing context. */
export interface FirefoxTab extends Tab {
  context: string;
}

/**
 * @param begins the address that pages of the extension begin with: Firefox never reports that one has loaded
 * @param urlOf what the tab shows, as far as events have told
 */
export function firefoxTab(
  connection: Connection,
  context: string,
  begins: string,
  urlOf: (context: string) => string,
): FirefoxTab {
  const evaluate: FirefoxTab['evaluate'] = async (what, ...args) =>
    (await evaluateIn(connection, context, what as string, args)) as never;
  const loaded = (url: string) => async () =>
    Boolean(await evaluate(`location.href === ${JSON.stringify(url)} && document.readyState === 'complete'`));

  const window = () => windowOf(connection, context);

  const tab: FirefoxTab = {
    context,
    evaluate,
    url: () => urlOf(context),
    async goto(url) {
      const own = url.startsWith(begins);
      await connection.send('browsingContext.navigate', { context, url, wait: own ? 'none' : 'complete' });
      if (own && !(await keepAsking(loaded(url), PATIENCE))) throw new Error(`${url} did not load`);
    },
    reload: () => connection.send('browsingContext.reload', { context, wait: 'complete' }),
    goBack: () => connection.send('browsingContext.traverseHistory', { context, delta: -1 }),
    content: () => evaluate('new XMLSerializer().serializeToString(document)') as Promise<string>,
    click: (selector) => clickIn(connection, context, selector),
    keyboard: {
      async press(key) {
        // The last stop leads into the browser's own bars, and these round to the page again. WebDriver gives keys to
        // the page all the while, as if the focus were there.
        const comesBack = key === 'Tab' && (await goRoundTo(() => evaluate('document.hasFocus()'), window));
        if (!comesBack) await pressIn(connection, context, key);
      },
      type: (text) => typeIn(connection, context, text),
    },
    async setInputFiles(selector, paths) {
      const { result } = await connection.send('browsingContext.locateNodes', {
        context,
        locator: { type: 'css', value: selector },
        maxNodeCount: 1,
      });
      const [node] = (result as { nodes: { sharedId: string }[] }).nodes;
      if (!node) throw new Error(`nothing matches ${selector}`);
      const files = (typeof paths === 'string' ? [paths] : paths).map((path) => resolve(path));
      await connection.send('input.setFiles', { context, element: { sharedId: node.sharedId }, files });
    },
    async waitForSelector(selector) {
      const there = () => evaluate(`document.querySelector(${JSON.stringify(selector)}) !== null`) as Promise<boolean>;
      if (!(await keepAsking(there, PATIENCE))) throw new Error(`not in ${PATIENCE} ms: ${selector}`);
    },
    emulateMedia: async ({ colorScheme }) => setTabScheme(await window(), context, colorScheme),
    setViewportSize: async (viewport) =>
      void (await connection.send('browsingContext.setViewport', { context, viewport })),
    async screenshot({ path }) {
      const { result } = await connection.send('browsingContext.captureScreenshot', { context, origin: 'document' });
      await writeFile(path, Buffer.from((result as { data: string }).data, 'base64'));
    },
    bringToFront: async () => void (await connection.send('browsingContext.activate', { context })),
    close: async () => void (await connection.send('browsingContext.close', { context })),
  };
  return tab;
}
