import { browser } from 'wxt/browser';

/** Firefox's side bar, which the types of the shared interface don't know: it opens in the window of the press. */
interface SideBar {
  open(): Promise<void>;
}

/**
 * Opens the panel; to be called straight from a press, or the browser doesn't open it. A window that can't hold a
 * panel is no reason not to read: the panel may be open elsewhere.
 */
export function openPanel(windowId: number | undefined): void {
  const { sidebarAction, sidePanel } = browser as typeof browser & { sidebarAction?: SideBar };
  const opened = sidebarAction ? sidebarAction.open() : sidePanel.open({ windowId: windowId as number });
  opened.catch(() => {});
}
