import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Driven, Tab } from '../../src/cli/demo/driven';
import type { Panel } from '../../src/cli/demo/panel';
import { press, until } from './hands';
import { openTestedRoom, type Room } from './support/browser';

/** As the extension's own pages have it. */
declare const chrome: typeof import('wxt/browser').browser;

let room: Room<Driven>;
let page: Tab;
let panel: Panel;
beforeAll(async () => {
  room = await openTestedRoom();
  page = await room.browser.openTab(room.market.addressOf('wendelow-industrial-zigzag/page.html'));
  panel = await press(room.browser, page, 'audit');
  await until('a mark on the button', async () => (await room.browser.markInFront()) === '•');
});
afterAll(() => room?.close());

/** The message that takes the mark off: true in every part, so that nothing but its sender is wrong. */
async function unmark() {
  const reading = await panel.evaluate(async () => {
    const all = await chrome.storage.session.get(null);
    return Object.values(all).find((value) => (value as { state?: string }).state === 'read') as {
      window: number;
      tab: number;
      number: number;
    };
  });
  const { window, tab, number } = reading;
  return { type: 'mark', window, tab, number, something: false };
}

/**
 * Does something where our reader runs: beside the page's scripts, with the extension's id. A page that breaks out of
 * its own world lands there. The panel injects it, as the background injects the reader.
 */
function inReadersWorld(what: 'send' | 'write', message: unknown = null): Promise<unknown> {
  return panel.evaluate(
    async (...given) => {
      const [tab] = await chrome.tabs.query({ active: true, currentWindow: true });
      // Injected as it stands here: both attempts in one, told apart by name.
      const func = async (...[name, value]: typeof given) => {
        if (name === 'send') {
          await chrome.runtime.sendMessage(value).catch(() => {});
          return `sent by ${chrome.runtime.id}`;
        }
        try {
          await chrome.storage.session.set({ 'reading/1/1': {} });
          return 'written';
        } catch {
          return 'refused';
        }
      };
      const [answer] = await chrome.scripting.executeScript({ target: { tabId: tab?.id ?? -1 }, func, args: given });
      return answer?.result;
    },
    what,
    message,
  );
}

it('a page has no way to send us anything', async () => {
  const reach = await page.evaluate(
    (id) => {
      const runtime = (
        globalThis as { chrome?: { runtime?: { sendMessage?: (id: string, message: unknown) => void } } }
      ).chrome?.runtime;
      if (!runtime?.sendMessage) return 'none';
      try {
        runtime.sendMessage(id, { type: 'packs-changed' });
        return 'sent';
      } catch {
        return 'refused';
      }
    },
    await panel.evaluate(() => chrome.runtime.id),
  );
  expect(['none', 'refused']).toContain(reach);
});

it('what comes from the world beside a page is ignored, though it carries our id', async () => {
  const id = await panel.evaluate(() => chrome.runtime.id);
  expect(await inReadersWorld('send', await unmark())).toBe(`sent by ${id}`);
  await sleep(500);
  expect(await room.browser.markInFront()).toBe('•');
});

it('that world can’t write what we keep', async () => {
  expect(await inReadersWorld('write')).toBe('refused');
});

it('the same message from our own page is heard: the test above could fail', async () => {
  const message = await unmark();
  await panel.evaluate((value) => chrome.runtime.sendMessage(value).catch(() => {}), message);
  await until('the mark to go', async () => (await room.browser.markInFront()) === '');
});

it('a message about an earlier press is ignored', async () => {
  const message = { ...(await unmark()), number: 99, something: true };
  await panel.evaluate((value) => chrome.runtime.sendMessage(value).catch(() => {}), message);
  await sleep(500);
  expect(await room.browser.markInFront()).toBe('');
});

it('the panel’s policy lets nothing in or out, whatever a mistake of ours would try', async () => {
  const outcome = await panel.evaluate(async () => {
    const tried: Record<string, string> = {};
    const attempt = async (name: string, work: () => unknown) => {
      try {
        await work();
        tried[name] = 'done';
      } catch {
        tried[name] = 'refused';
      }
    };
    const loaded = (element: HTMLElement) =>
      new Promise((resolve, reject) => {
        element.onload = resolve;
        element.onerror = reject;
        document.body.append(element);
      });
    await attempt('request', () => fetch('http://127.0.0.1:9/out'));
    await attempt('picture', () => loaded(Object.assign(new Image(), { src: 'http://127.0.0.1:9/out.png' })));
    await attempt('markup', () => {
      document.createElement('div').innerHTML = '<b>x</b>';
    });
    await attempt('script', () => loaded(Object.assign(document.createElement('script'), { src: '/background.js' })));
    await attempt('frame', () => {
      const frame = document.createElement('iframe');
      frame.srcdoc = '<p>x</p>';
    });
    return tried;
  });
  expect(outcome).toEqual({
    request: 'refused',
    picture: 'refused',
    markup: 'refused',
    script: 'refused',
    frame: 'refused',
  });
  expect(room.browser.requests().filter(({ url }) => url.includes('/out'))).toEqual([]);
});
