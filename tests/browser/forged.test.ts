import type { CDPSession, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Panel } from '../../src/cli/demo/panel';
import { markInFront, press, until } from './hands';
import { openRoom, type Room } from './support/browser';

/** As the extension's own pages have it. */
declare const chrome: typeof import('wxt/browser').browser;

let room: Room;
let page: Page;
let panel: Panel;
beforeAll(async () => {
  room = await openRoom();
  page = await room.browser.openTab(room.market.addressOf('wendelow-industrial-zigzag/page.html'));
  panel = await press(room.browser, page, 'audit');
  await until('a mark on the button', async () => (await markInFront(room.browser)) === '•');
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

/** Evaluates where our reader runs: beside the page's scripts, with the extension's id. A page that breaks out of its
 * own world lands there. */
async function inReadersWorld(expression: string): Promise<unknown> {
  const session: CDPSession = await room.browser.context.newCDPSession(page);
  const worlds: { id: number; origin: string }[] = [];
  session.on('Runtime.executionContextCreated', ({ context }) => worlds.push(context));
  await session.send('Runtime.enable');
  const ours = worlds.find(({ origin }) => origin.includes(room.browser.extensionId));
  if (!ours) throw new Error(`no world of ours among ${worlds.map(({ origin }) => origin).join()}`);
  const { result, exceptionDetails } = await session.send('Runtime.evaluate', {
    contextId: ours.id,
    expression,
    awaitPromise: true,
    returnByValue: true,
  });
  await session.detach();
  if (exceptionDetails) throw new Error(exceptionDetails.exception?.description ?? exceptionDetails.text);
  return result.value;
}

it('a page has no way to send us anything', async () => {
  const reach = await page.evaluate((id) => {
    const runtime = (globalThis as { chrome?: { runtime?: { sendMessage?: (id: string, message: unknown) => void } } })
      .chrome?.runtime;
    if (!runtime?.sendMessage) return 'none';
    try {
      runtime.sendMessage(id, { type: 'packs-changed' });
      return 'sent';
    } catch {
      return 'refused';
    }
  }, room.browser.extensionId);
  expect(['none', 'refused']).toContain(reach);
});

it('what comes from the world beside a page is ignored, though it carries our id', async () => {
  const message = JSON.stringify(await unmark());
  await inReadersWorld(`chrome.runtime.sendMessage(${message}).catch(() => {}), chrome.runtime.id`);
  await page.waitForTimeout(500);
  expect(await markInFront(room.browser)).toBe('•');
});

it('that world can’t write what we keep', async () => {
  const answer = await inReadersWorld(
    `(async () => { try { await chrome.storage.session.set({ 'reading/1/1': {} }); return 'written'; } catch (e) { return 'refused'; } })()`,
  );
  expect(answer).toBe('refused');
});

it('the same message from our own page is heard: the test above could fail', async () => {
  const message = await unmark();
  await panel.evaluate((value) => chrome.runtime.sendMessage(value).catch(() => {}), message);
  await until('the mark to go', async () => (await markInFront(room.browser)) === '');
});

it('a message about an earlier press is ignored', async () => {
  const message = { ...(await unmark()), number: 99, something: true };
  await panel.evaluate((value) => chrome.runtime.sendMessage(value).catch(() => {}), message);
  await page.waitForTimeout(500);
  expect(await markInFront(room.browser)).toBe('');
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
