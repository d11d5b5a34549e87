import { type Connection, evaluateIn } from './bidi';

/** Runs in the browser's own window, with all rights. */
export type InWindow = (what: string | ((...args: never[]) => unknown), args?: readonly unknown[]) => Promise<unknown>;

interface Context {
  context: string;
  url: string;
  clientWindow: string;
}

/** The browser's own window that holds a tab, to run things in with all rights. */
export async function windowOf(connection: Connection, tab: string): Promise<InWindow> {
  const tree = async (params: object) =>
    ((await connection.send('browsingContext.getTree', params)).result as { contexts: Context[] }).contexts;
  const [shown] = await tree({ root: tab });
  const windows = await tree({ 'moz:scope': 'chrome' });
  const window = windows.find(
    ({ url, clientWindow }) => url.endsWith('/browser.xhtml') && clientWindow === shown?.clientWindow,
  );
  if (!window) throw new Error('the tab is in no window');
  return (what, args) => evaluateIn(connection, window.context, what, args);
}

/** As the browser's own window has them; nothing of this is public interface. */
declare const CustomizableUI: {
  addWidgetToArea(id: string, area: string): void;
  getPlacementOfWidget(id: string): { area: string } | null;
};
declare const WebExtensionPolicy: {
  getByID(id: string): {
    extension: { terminateBackground(): Promise<void> };
    readyPromise: Promise<unknown>;
    privateBrowsingAllowed: boolean;
  } | null;
};
interface BrowserWindow extends Window {
  synthesizeMouseEvent(type: string, x: number, y: number, mouse: object): boolean;
}

/** The id of the extension's button, made of its own id as Firefox makes it. */
const widgetOf = (id: string) => `${id.toLowerCase().replace(/[^a-z0-9_-]/g, '_')}-browser-action`;

/** A press of the mouse on the extension's toolbar button, put on the tool bar first as a user would. */
export async function pressButton(inWindow: InWindow, id: string): Promise<void> {
  await inWindow(
    async (widget: string) => {
      if (CustomizableUI.getPlacementOfWidget(widget)?.area !== 'nav-bar')
        CustomizableUI.addWidgetToArea(widget, 'nav-bar');
      const node = document.getElementById(widget);
      if (!node) throw new Error('the extension has no button');
      const button = node.querySelector('.unified-extensions-item-action-button') ?? node;
      let box = button.getBoundingClientRect();
      for (let frames = 0; frames < 120 && box.width === 0; frames += 1) {
        await new Promise((resolve) => requestAnimationFrame(resolve));
        box = button.getBoundingClientRect();
      }
      const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
      const { synthesizeMouseEvent } = window as unknown as BrowserWindow;
      for (const type of ['mousemove', 'mousedown', 'mouseup']) {
        const buttons = type === 'mousedown' ? 1 : 0;
        synthesizeMouseEvent.call(window, type, x, y, { button: 0, buttons, clickCount: 1 });
      }
    },
    [widgetOf(id)],
  );
}

/** What stands on the button for the tab in front. */
export async function badgeOf(inWindow: InWindow, id: string): Promise<string> {
  return (await inWindow(
    (widget: string) =>
      document.getElementById(widget)?.querySelector('.unified-extensions-item-action-button')?.getAttribute('badge') ??
      '',
    [widgetOf(id)],
  )) as string;
}

interface Transferable {
  init(from: null): void;
  addDataFlavor(flavour: string): void;
  getTransferData(flavour: string, into: object): void;
}
declare const Cc: Record<string, { createInstance(as: unknown): Transferable }>;
declare const Ci: { nsITransferable: unknown; nsISupportsString: unknown };
interface Text {
  value: { QueryInterface(as: unknown): { data: string } };
}

/** What stands on the clipboard, as text. */
export async function textOnClipboard(inWindow: InWindow): Promise<string> {
  return (await inWindow(() => {
    const carrier = Cc['@mozilla.org/widget/transferable;1']?.createInstance(Ci.nsITransferable);
    if (!carrier) throw new Error('no clipboard');
    carrier.init(null);
    carrier.addDataFlavor('text/plain');
    Services.clipboard.getData(carrier, Services.clipboard.kGlobalClipboard);
    const text = {} as Text;
    carrier.getTransferData('text/plain', text);
    return text.value.QueryInterface(Ci.nsISupportsString).data;
  })) as string;
}

/** Shows a tab light or dark, whatever the system is. */
export async function setTabScheme(inWindow: InWindow, tab: string, scheme: 'light' | 'dark'): Promise<void> {
  await inWindow(
    (id: string, wanted: string) => {
      const { NavigableManager } = ChromeUtils.importESModule(
        'chrome://remote/content/shared/NavigableManager.sys.mjs',
      ) as { NavigableManager: { getBrowserById(id: string): { browsingContext: object } } };
      Object.assign(NavigableManager.getBrowserById(id).browsingContext, { prefersColorSchemeOverride: wanted });
    },
    [tab, scheme],
  );
}

/** Ends the extension's background page, as the browser does with an idle one. */
export async function stopBackground(inWindow: InWindow, id: string): Promise<void> {
  await inWindow((extension: string) => WebExtensionPolicy.getByID(extension)?.extension.terminateBackground(), [id]);
}

interface Modules {
  importESModule(url: string): Record<string, unknown>;
}
interface PrivateWindow extends Window {
  gBrowserInit?: { delayedStartupFinished: boolean };
  gBrowser: {
    tabs: unknown[];
    selectedTab: unknown;
    addTab(url: string, how: object): unknown;
    removeTab(tab: unknown): void;
  };
}
declare const ChromeUtils: Modules;
declare const Services: {
  scriptSecurityManager: { getSystemPrincipal(): unknown };
  clipboard: { getData(into: object, which: number): void; kGlobalClipboard: number };
};
declare function OpenBrowserWindow(how: { private: boolean }): PrivateWindow;

/** Allows the extension in private windows, as its user would in the add-on manager, and opens one at that address. */
export async function openPrivateWindow(inWindow: InWindow, id: string, url: string): Promise<void> {
  await inWindow(
    async (extension: string, address: string) => {
      const { ExtensionPermissions } = ChromeUtils.importESModule(
        'resource://gre/modules/ExtensionPermissions.sys.mjs',
      ) as { ExtensionPermissions: { add(id: string, what: object): Promise<void> } };
      const { AddonManager } = ChromeUtils.importESModule('resource://gre/modules/AddonManager.sys.mjs') as {
        AddonManager: { getAddonByID(id: string): Promise<{ reload(): Promise<void> }> };
      };
      const pause = (milliseconds: number) => new Promise((resolve) => setTimeout(resolve, milliseconds));
      if (!WebExtensionPolicy.getByID(extension)?.privateBrowsingAllowed) {
        await ExtensionPermissions.add(extension, { permissions: ['internal:privateBrowsingAllowed'], origins: [] });
        await (await AddonManager.getAddonByID(extension)).reload();
        await WebExtensionPolicy.getByID(extension)?.readyPromise;
        // Its pages are served a moment after it says that it is ready.
        await pause(1_500);
      }
      const opened = OpenBrowserWindow({ private: true });
      await new Promise((resolve) => opened.addEventListener('load', resolve, { once: true }));
      // Until then the window still puts its own first page into its tab.
      while (!opened.gBrowserInit?.delayedStartupFinished) await pause(50);
      const triggeringPrincipal = Services.scriptSecurityManager.getSystemPrincipal();
      const [first] = opened.gBrowser.tabs;
      opened.gBrowser.selectedTab = opened.gBrowser.addTab(address, { triggeringPrincipal });
      opened.gBrowser.removeTab(first);
    },
    [id, url],
  );
}
