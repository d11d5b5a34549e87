import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Driven } from '../../src/cli/demo/driven';
import type { Panel } from '../../src/cli/demo/panel';
import { whereOf } from '../../src/session/where';
import { panelTexts as texts } from '../../src/text/catalogue/panel';
import { folderOf, press, seenErrors, until, waitForScreen } from './hands';
import { openTestedRoom, type Room } from './support/browser';
import { OUTLIVES_RELOAD, OWN_PAGE, onlyWhere, PRESS_OPENS_FILES, SHOWS_PDF } from './support/differences';

/** As the extension's own pages have it. */
declare const chrome: typeof import('wxt/browser').browser;

const advert = (title: string) =>
  `<!doctype html><html lang="en"><meta charset="utf-8"><title>${title}</title><h1>${title}</h1><p>An old sewing machine in cast iron, runs well.</p><p>Price: £40</p>`;
const PDF =
  '%PDF-1.4\n1 0 obj<</Type/Catalog/Pages 2 0 R>>endobj\n2 0 obj<</Type/Pages/Kids[]/Count 0>>endobj\ntrailer<</Root 1 0 R>>\n%%EOF\n';

let room: Room<Driven>;
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
    'moving.html': `${advert('Moving sewing machine')}
      <button id="go" onclick="history.pushState({}, '', '/moved.html'); load('Moved sewing machine')">go</button>
      <button id="replace" onclick="history.replaceState({}, '', '/replaced.html'); load('Replaced sewing machine')">go</button>
      <script>
        // As single-page sites do it: the address first, then what a server has to say.
        const load = (title) => setTimeout(() => {
          document.title = document.querySelector('h1').textContent = title;
        }, 400);
        addEventListener('popstate', () => load('Moving sewing machine'));
      </script>`,
    'file.pdf': PDF,
    'picture.png': readFileSync('src/public/icon/128.png'),
  });
  room = await openTestedRoom({ packs: false, market: folder });
});
afterAll(() => room?.close());

const open = (path: string) => room.browser.openTab(room.market.addressOf(path));

describe('the panel says what is so and what to do', () => {
  it('on one of the browser’s own pages', async () => {
    const page = await room.browser.openTab(OWN_PAGE);
    const panel = await press(room.browser, page, 'refused');
    expect(await panel.text()).toContain(texts.refused.reasons['browser-page']);
    await page.close();
  });

  it('on a file of this computer', async () => {
    const page = await room.browser.openTab(`file://${resolve(folder, 'one.html')}`);
    // Whether an extension may read files is the browser's setting; without leave the panel says how to get it.
    const panel = await press(room.browser, page, 'audit', 'refused');
    const allowed = PRESS_OPENS_FILES || (await panel.evaluate(() => chrome.extension.isAllowedFileSchemeAccess()));
    expect(await panel.text()).toContain(allowed ? 'First sewing machine' : texts.refused.reasons.file);
    await page.close();
  });

  it('on a picture in the browser’s viewer', async () => {
    const page = await open('picture.png');
    const panel = await press(room.browser, page, 'refused');
    expect(await panel.text()).toContain(texts.refused.reasons.document);
    await page.close();
  });

  onlyWhere(SHOWS_PDF)('on a PDF in the browser’s viewer', async () => {
    const page = await open('file.pdf');
    const panel = await press(room.browser, page, 'refused');
    expect(await panel.text()).toContain(texts.refused.heading);
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
    await until('no mark for a page that was not read', async () => (await room.browser.markInFront()) === '');
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

  it('keeps to what was read where only the anchor changes', async () => {
    const page = await open('moving.html');
    const panel = await press(room.browser, page, 'audit');
    await page.evaluate(() => {
      location.hash = 'photos';
    });
    await sleep(500);
    expect(await panel.evaluate(() => document.querySelector('[data-screen="audit"]') !== null)).toBe(true);
    await page.close();
  });

  it('reads a single-page site anew as it moves, forth and back, without another press', async () => {
    const page = await open('moving.html');
    const panel = await press(room.browser, page, 'audit');
    await page.click('#go');
    await showsAdvert(panel, 'Moved sewing machine');
    await page.click('#replace');
    await showsAdvert(panel, 'Replaced sewing machine');
    await page.goBack();
    await showsAdvert(panel, 'Moving sewing machine');
    await page.close();
  });

  it('says that the page was left after going back to an earlier one', async () => {
    const page = await open('one.html');
    await page.goto(room.market.addressOf('two.html'));
    const panel = await press(room.browser, page, 'audit');
    await page.goBack();
    await waitForScreen(panel, 'left');
    await page.close();
  });

  it('keeps nothing of a tab that was closed', async () => {
    const page = await open('one.html');
    const panel = await press(room.browser, page, 'audit');
    const other = await open('empty.html');
    await page.close();
    await waitForScreen(panel, 'waiting');
    await until('no reading is left', async () => (await kept(panel)) === 0);
    await other.close();
  });

  it('has one panel for each window, each with its own reading', async () => {
    const first = await open('one.html');
    const panel = await press(room.browser, first, 'audit');
    const second = await room.browser.openWindow(room.market.addressOf('two.html'));
    const other = await press(room.browser, second, 'audit');
    await showsAdvert(other, 'Second sewing machine');
    await showsAdvert(panel, 'First sewing machine');
    await second.close();
    await first.close();
  });
});

/** Waits for the audit of an advert of that title. */
function showsAdvert(panel: Panel, title: string): Promise<void> {
  return panel.waitFor(`document.querySelector('[data-screen="audit"] h1')?.textContent === ${JSON.stringify(title)}`);
}

/** How many readings are kept. */
async function kept(panel: Panel): Promise<number> {
  const keys = await panel.evaluate(async () => Object.keys(await chrome.storage.session.get(null)));
  return keys.filter((key) => whereOf(key) !== null).length;
}

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

onlyWhere(OUTLIVES_RELOAD)('an update closes an open panel, and the next press opens it and reads anew', async () => {
  const page = await open('one.html');
  const panel = await press(room.browser, page, 'audit');
  // What a browser does to put another program in the place of this one.
  await panel.evaluate(() => void setTimeout(() => chrome.runtime.reload(), 100));
  await until('the panel is closed', () =>
    panel.text().then(
      () => false,
      () => true,
    ),
  );
  // The button is there again a moment later, and what it starts a moment after that.
  const pressed = async () => {
    await room.browser.pressToolbarButton(page);
    await room.browser.openPanel(2_000);
    return true;
  };
  await until('the panel opens again', () => pressed().catch(() => false), 30_000);
  await showsAdvert(await room.browser.openPanel(), 'First sewing machine');
  await page.close();
});

it('none of this made an error', async () => {
  expect(await seenErrors(room.browser)).toEqual([]);
});
