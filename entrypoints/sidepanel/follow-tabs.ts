import { browser } from 'wxt/browser';
import type { SessionEvent } from '../../src/session/events';

/** Tells which tab is in front in the panel's own window, now and whenever that changes. */
export async function followTabs(windowId: number, emit: (event: SessionEvent) => void): Promise<void> {
  let changed = false;
  browser.tabs.onActivated.addListener((active) => {
    if (active.windowId !== windowId) return;
    changed = true;
    emit({ type: 'tabChosen', where: { window: windowId, tab: active.tabId } });
  });
  const [tab] = await browser.tabs.query({ active: true, windowId });
  if (!changed && tab?.id !== undefined) emit({ type: 'tabChosen', where: { window: windowId, tab: tab.id } });
}
