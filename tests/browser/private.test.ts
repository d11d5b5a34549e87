import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Driven, Tab } from '../../src/cli/demo/driven';
import type { Panel } from '../../src/cli/demo/panel';
import { draftRoomTexts } from '../../src/text/catalogue/draft-room';
import { likelyTexts } from '../../src/text/catalogue/likely';
import { workbenchTexts as texts } from '../../src/text/catalogue/workbench';
import { ourRequests, press, seenErrors, until } from './hands';
import { expectAccessible, looksOfPanel, looksOfTab } from './support/accessible';
import { openTestedRoom, type Room } from './support/browser';
import { PAGES_IN_PRIVATE } from './support/differences';
import { ownPage } from './support/page';

// A private window: the button works there as anywhere, the panel says that nothing is kept, and nothing is.

/** As the extension's own pages have it. */
declare const chrome: typeof import('wxt/browser').browser;

let room: Room<Driven>;
let page: Tab;
let panel: Panel;
beforeAll(async () => {
  room = await openTestedRoom({ packs: false, privately: true });
});
afterAll(() => room?.close());

const ADVERT = 'oxlebarrow-honest/page.html';
async function readPrivately(): Promise<void> {
  page = await room.browser.openPrivately(room.market.addressOf(ADVERT));
  panel = await press(room.browser, page, 'audit');
  await panel.waitForSelector('.asked');
}

/** Answers the question, and says what is said of keeping that. */
async function answer(): Promise<string> {
  await panel.click('.answer');
  await panel.waitForSelector('[data-seen]');
  return panel.evaluate(`document.querySelector('[data-part="settle"]').textContent`);
}

it('reads an advert there, and says that an answer is not kept', async () => {
  await readPrivately();
  expect(await panel.evaluate(async () => (await chrome.windows.getCurrent()).incognito)).toBe(true);
  const said = await answer();
  expect(said).toContain(likelyTexts.settle.keptNot);
  expect(said).not.toContain(likelyTexts.settle.kept);
  await expectAccessible(looksOfPanel(panel), 'light');
});

it('forgets the answer with the window', async () => {
  await page.close();
  await readPrivately();
  expect(await panel.evaluate(`document.querySelectorAll('[data-seen]').length`)).toBe(0);
});

it('leads to the packs: in Firefox in that window, in Chromium in an ordinary one', async () => {
  const address = room.browser.addressOf('workbench.html');
  await panel.click('[data-part="packs-link"]');
  const bench = ownPage(await room.browser.tabAt(address));
  await bench.shows('[data-pack-id="trade"]');
  expect(await bench.tab.evaluate(async () => (await chrome.windows.getCurrent()).incognito)).toBe(PAGES_IN_PRIVATE);
  expect(await bench.count('[data-part="private"]')).toBe(PAGES_IN_PRIVATE ? 1 : 0);
  if (PAGES_IN_PRIVATE) {
    // What came with the program speaks; nothing can be kept, which is said before anything is tried.
    expect(await bench.text('[data-part="private"]')).toBe(texts.shelf.private);
    await bench.click('[data-pack-id="trade"] input[type="checkbox"]');
    await bench.shows('[data-part="trouble"]', texts.troubles.denied);
    await expectAccessible(looksOfTab(bench.tab), 'light');
    await bench.click('[data-part="to-drafts"]');
    await bench.shows('[data-part="private"]', draftRoomTexts.private);
    expect(await bench.count('[data-part="trouble"]')).toBe(0);
  }
  await bench.tab.close();
});

it('has left nothing once its windows are closed', async () => {
  await page.close();
  const bench = ownPage(await room.browser.openTab(room.browser.addressOf('workbench.html')));
  await bench.shows('[data-pack-id="trade"]');
  const answers = await bench.tab.evaluate(
    () =>
      new Promise<number>((resolve, reject) => {
        const opening = indexedDB.open('bedplate');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const counting = opening.result.transaction('answers').objectStore('answers').count();
          counting.onsuccess = () => {
            opening.result.close();
            resolve(counting.result);
          };
        };
      }),
  );
  expect(answers).toBe(0);
  // What is there in each run of the browser, whatever was opened.
  const OURS = ['log-begun'];
  await until('no reading is left', async () => {
    const keys = await bench.tab.evaluate(async () => Object.keys(await chrome.storage.session.get(null)));
    return keys.every((key) => OURS.includes(key));
  });
});

it('an ordinary window keeps what is answered: the tests above could fail', async () => {
  page = await room.browser.openTab(room.market.addressOf(ADVERT));
  panel = await press(room.browser, page, 'audit');
  await panel.waitForSelector('.asked');
  expect(await answer()).toContain(likelyTexts.settle.kept);
  await page.close();
  page = await room.browser.openTab(room.market.addressOf(ADVERT));
  await press(room.browser, page, 'audit');
  await panel.waitForSelector('[data-seen]');
});

it('none of this made a request or an error', async () => {
  expect(ourRequests(room.browser)).toEqual([]);
  expect(await seenErrors(room.browser)).toEqual([]);
});
