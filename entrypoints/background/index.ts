import { browser } from 'wxt/browser';
import { defineBackground } from 'wxt/utils/define-background';
import { followTab, resumeReadings } from '../../src/session/follow-tab';
import { readTab } from '../../src/session/read-tab';
import { Readings } from '../../src/session/readings';
import type { Where } from '../../src/session/where';
import { onMessage } from '../shared/follow-messages';
import { today } from '../shared/today';
import { beginLog } from './begin-log';
import { followPacks } from './follow-packs';
import { showMark } from './mark';
import { openPanel } from './open-panel';
import { offerSelectionMenu } from './selection-menu';
import { tabReach } from './tab-reach';

// The worker remembers nothing: it may be killed between any two lines below. What lasts is in storage.session.
export default defineBackground(() => {
  void beginLog();

  const readings = new Readings(browser.storage.session, (task) => navigator.locks.request('readings', task));

  // First in the queue for the readings: what is under way now is what an earlier worker has left undone.
  void resumeReadings(addressOf, tabReach, readings);

  // Whoever listens for an update is not cut off by one: it waits until the browser starts anew.
  browser.runtime.onUpdateAvailable.addListener(() => {});

  browser.action.onClicked.addListener((tab) => {
    // First of all: a browser opens the panel only straight from the press, before anything is awaited.
    openPanel(tab.windowId);
    if (tab.id !== undefined) void read({ window: tab.windowId, tab: tab.id }, tab.url);
  });

  browser.tabs.onUpdated.addListener(async (id, change, tab) => {
    if (change.status === undefined && change.url === undefined) return;
    await follow({ window: tab.windowId, tab: id });
  });
  browser.tabs.onRemoved.addListener((tab, { windowId }) => readings.forget({ window: windowId, tab }));
  browser.tabs.onAttached.addListener((tab, { newWindowId }) => readings.move(tab, { window: newWindowId, tab }));
  browser.tabs.onReplaced.addListener(async (added, removed) => {
    const { windowId } = await browser.tabs.get(added);
    await readings.forget({ window: windowId, tab: removed });
  });

  onMessage('mark', (message) => void mark(message));

  followPacks();

  offerSelectionMenu();

  async function read(where: Where, url: string | undefined) {
    await readTab(where, url, today(), tabReach, readings);
    // A page may have moved on while it was read, when there was nothing yet that could be followed.
    if ((await readings.get(where))?.state === 'read') await follow(where);
  }

  async function follow(where: Where) {
    await followTab(where, today(), tabReach, readings, () => showMark(where.tab, false));
  }

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

/** A tab's address, or undefined where the browser keeps it from us. */
async function addressOf(tab: number): Promise<string | undefined> {
  return (await browser.tabs.get(tab).catch(() => null))?.url;
}
