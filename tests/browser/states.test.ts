import { resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { panelTexts as texts } from '../../src/text/catalogue/panel';
import { folderOf, markInFront, ourErrors, press, until, waitForScreen } from './hands';
import { openRoom, type Room } from './support/browser';

/** As the extension's own pages have it. */
declare const chrome: typeof import('wxt/browser').browser;

const advert = (title: string) =>
  `<!doctype html><html lang="en"><meta charset="utf-8"><title>${title}</title><h1>${title}</h1><p>An old sewing machine in cast iron, runs well.</p><p>Price: £40</p>`;
const PDF =
  '%PDF-1.4\n1 0 obj<</Type/Catalog/Pages 2 0 R>>endobj\n2 0 obj<</Type/Pages/Kids[]/Count 0>>endobj\ntrailer<</Root 1 0 R>>\n%%EOF\n';

let room: Room;
let folder: string;
beforeAll(async () => {
  folder = folderOf({
    'one.html': advert('First sewing machine'),
    'two.html': advert('Second sewing machine'),
    'empty.html': '<!doctype html><html lang="en"><title></title><body></body></html>',
    'bicycle.html': advert('Gentleman’s bicycle').replace(
      'An old sewing machine in cast iron, runs',
      'Three gears, rides',
    ),
    'moving.html': `${advert('Moving sewing machine')}<button onclick="history.pushState({}, '', '/other.html')">go</button>`,
    'file.pdf': PDF,
  });
  room = await openRoom({ packs: false, market: folder });
});
afterAll(() => room?.close());

const open = (path: string) => room.browser.openTab(room.market.addressOf(path));

describe('the panel says what is so and what to do', () => {
  it('on one of the browser’s own pages', async () => {
    const page = await room.browser.openTab('chrome://version/');
    const panel = await press(room.browser, page, 'refused');
    expect(await panel.text()).toContain(texts.refused.reasons['browser-page']);
    await page.close();
  });

  it('on a file of this computer', async () => {
    const page = await room.browser.openTab(`file://${resolve(folder, 'one.html')}`);
    // Whether an unpacked extension may read files is the browser's setting; without leave the panel says how to get it.
    const allowed = await room.browser.worker()?.evaluate(() => chrome.extension.isAllowedFileSchemeAccess());
    const panel = await press(room.browser, page, allowed ? 'audit' : 'refused');
    expect(await panel.text()).toContain(allowed ? 'First sewing machine' : texts.refused.reasons.file);
    await page.close();
  });

  it('on a PDF in the browser’s viewer', async () => {
    const page = await room.browser.context.newPage();
    await page.goto(room.market.addressOf('file.pdf')).catch(() => {});
    const panel = await press(room.browser, page, 'refused', 'no-listing', 'no-pack');
    await panel.waitForSelector('[data-screen="refused"]', 1000);
    await page.close();
  });

  it('on a page with nothing for sale', async () => {
    const page = await open('empty.html');
    const panel = await press(room.browser, page, 'no-listing');
    expect(await panel.text()).toContain(texts.noListing.text);
    await page.close();
  });

  it('on an advert that no pack speaks of', async () => {
    const page = await open('bicycle.html');
    const panel = await press(room.browser, page, 'no-pack');
    expect(await panel.text()).toContain('Gentleman’s bicycle');
    await page.close();
  });
});

describe('the panel keeps to the tab in front', () => {
  it('shows each tab its own reading, and a tab without one what to do', async () => {
    const first = await open('one.html');
    const panel = await press(room.browser, first, 'audit');
    const second = await open('two.html');
    await waitForScreen(panel, 'waiting');
    expect(await panel.text()).toContain(texts.waiting.text);
    await press(room.browser, second, 'audit');
    expect(await panel.text()).toContain('Second sewing machine');
    await first.bringToFront();
    await panel.waitFor(`document.querySelector('h1')?.textContent === 'First sewing machine'`);
    await second.close();
    await first.close();
  });

  it('says that the page was left, and reads the new one on a press', async () => {
    const page = await open('one.html');
    const panel = await press(room.browser, page, 'audit');
    await page.goto(room.market.addressOf('two.html'));
    await waitForScreen(panel, 'left');
    expect(await panel.text()).toContain(texts.left.text);
    expect(await panel.text()).not.toContain('First sewing machine');
    await until('no mark for a page that was not read', async () => (await markInFront(room.browser)) === '');
    await press(room.browser, page, 'audit');
    expect(await panel.text()).toContain('Second sewing machine');
    await page.close();
  });

  it('takes a reload for another document', async () => {
    const page = await open('one.html');
    const panel = await press(room.browser, page, 'audit');
    await page.reload();
    await waitForScreen(panel, 'left');
    await page.close();
  });

  it('takes an anchor for the same page, and a new address for another one', async () => {
    const page = await open('moving.html');
    const panel = await press(room.browser, page, 'audit');
    await page.evaluate(() => {
      location.hash = 'photos';
    });
    await page.waitForTimeout(500);
    expect(await panel.evaluate(() => document.querySelector('[data-screen="audit"]') !== null)).toBe(true);
    await page.click('button');
    await waitForScreen(panel, 'left');
    await page.close();
  });
});

describe('the worker may be killed at any time', () => {
  it('and reads on the next press', async () => {
    const page = await open('one.html');
    const panel = await press(room.browser, page, 'audit');
    await room.browser.stopWorker();
    await page.goto(room.market.addressOf('two.html'));
    await waitForScreen(panel, 'left');
    await room.browser.stopWorker();
    await press(room.browser, page, 'audit');
    expect(await panel.text()).toContain('Second sewing machine');
    await page.close();
  });
});

it('none of this made an error', () => {
  expect(ourErrors(room.browser)).toEqual([]);
});
