import { browser } from 'wxt/browser';
import { defineBackground } from 'wxt/utils/define-background';
import { messageFrom } from '../../src/session/messages';
import { checkTab, readTab } from '../../src/session/read-tab';
import { Readings } from '../../src/session/readings';
import { ourselves } from '../shared/ourselves';
import { showMark } from './mark';
import { tabReach } from './tab-reach';

// The worker remembers nothing: it may be killed between any two lines below. What lasts is in storage.session.
export default defineBackground(() => {
  const readings = new Readings(browser.storage.session, (task) => navigator.locks.request('readings', task));

  browser.action.onClicked.addListener((tab) => {
    // First of all: a browser opens the panel only straight from the press, before anything is awaited.
    // A window that can't hold a panel is no reason not to read: the panel may be open elsewhere.
    browser.sidePanel.open({ windowId: tab.windowId }).catch(() => {});
    if (tab.id !== undefined) void readTab({ window: tab.windowId, tab: tab.id }, tab.url, today(), tabReach, readings);
  });

  browser.tabs.onUpdated.addListener(async (id, change, tab) => {
    if (change.status === undefined && change.url === undefined) return;
    if (await checkTab({ window: tab.windowId, tab: id }, tabReach, readings)) await showMark(id, false);
  });
  browser.tabs.onRemoved.addListener((tab, { windowId }) => readings.forget({ window: windowId, tab }));
  browser.tabs.onAttached.addListener((tab, { newWindowId }) => readings.move(tab, { window: newWindowId, tab }));
  browser.tabs.onReplaced.addListener(async (added, removed) => {
    const { windowId } = await browser.tabs.get(added);
    await readings.forget({ window: windowId, tab: removed });
  });

  browser.runtime.onMessage.addListener((value, sender) => {
    const message = messageFrom(value, sender, ourselves());
    if (message?.type === 'mark') void mark(message);
  });

  /** The mark is set only for the reading that the panel speaks of, while it is still the tab's last one. */
  async function mark({
    window,
    tab,
    number,
    something,
  }: {
    window: number;
    tab: number;
    number: number;
    something: boolean;
  }) {
    const reading = await readings.get({ window, tab });
    if (reading?.state === 'read' && reading.number === number) await showMark(tab, something);
  }
});

/** Today where the user is, ISO 8601. */
function today(): string {
  const now = new Date();
  const two = (n: number) => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
