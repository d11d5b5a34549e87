import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Driven, Tab } from '../../src/cli/demo/driven';
import { enquiryTexts } from '../../src/text/catalogue/enquiry';
import { folderOf, ourRequests, seenErrors, until } from './hands';
import { openTestedRoom, type Room } from './support/browser';
import { type OwnPage, ownPage } from './support/page';

// Words on any page, asked about by the browser's own menu, without a press of the button and without leave for the site.

const WORDS = 'Grindlewade Haddercombe sewing machine, weighs only 4 kg. Serial number KD 439114.';
const PAGE = `<!doctype html><html lang="en"><title>A letter</title><body><p id="words" style="font-size:2em">${WORDS}</p><p>Not marked.</p></body></html>`;

let room: Room<Driven>;
let page: Tab;
let bench: OwnPage;
beforeAll(async () => {
  room = await openTestedRoom({ market: folderOf({ 'letter.html': PAGE }) });
  page = await room.browser.openTab(room.market.addressOf('letter.html'));
  await page.evaluate(() => {
    const words = document.getElementById('words');
    if (words) getSelection()?.selectAllChildren(words);
  });
});
afterAll(() => room?.close());

it('opens the enquiry with these words, which the address doesn’t hold', async () => {
  await room.browser.pressSelectionMenu(page);
  bench = ownPage(await room.browser.tabAt(room.browser.addressOf('workbench.html#enquiry')));
  await bench.shows('[data-part="said"][open]');
  expect(await bench.valueOf('#enquiry-said')).toBe(WORDS);
});

it('knows from them which thing is meant, and holds them against what is known', async () => {
  await bench.shows('[data-part="outcome"] [data-part="summary"]');
  await bench.shows('[data-part="likely"]', 'Grindlewade Haddercombe');
  await bench.shows('[data-finding][data-standing="disproved"]', '4 kg');
});

it('takes them in anew when they are changed, and leaves them out when they are gone', async () => {
  await bench.fill('#enquiry-said', 'Haddercombe sewing machine');
  await bench.click('[data-part="take-said"]');
  await bench.lacks('[data-finding][data-standing="disproved"]', '4 kg');
  expect(await bench.text('[data-part="said-state"]')).toBe(enquiryTexts.said.taken);
  await bench.fill('#enquiry-said', '');
  await bench.click('[data-part="take-said"]');
  await bench.lacks('[data-part="outcome"]');
});

it('goes on as a seller’s draft, with the words, the number and what was seen', async () => {
  await bench.fill('#enquiry-said', WORDS);
  await bench.click('[data-part="take-said"]');
  await bench.shows('[data-part="likely"]', 'Grindlewade Haddercombe');
  await bench.click('[data-part="to-draft"]');
  await bench.shows('#draft-title');
  expect(await bench.valueOf('#draft-title')).toBe('Grindlewade Haddercombe');
  expect(await bench.valueOf('#draft-description')).toBe(WORDS);
  await bench.shows('[data-kept="kept"]');
  await bench.reload();
  await bench.shows('.draft-name', 'Grindlewade Haddercombe');
});

it('finds nothing under an address that was used already', async () => {
  await bench.tab.evaluate(() => {
    location.hash = '#enquiry?selection=00000000-0000-4000-8000-000000000000';
  });
  await until('the address is tidied', async () => bench.tab.evaluate(() => location.hash === '#enquiry'));
  await bench.shows('[data-part="said"]');
  expect(await bench.valueOf('#enquiry-said')).toBe('');
});

it('none of this made a request or an error', async () => {
  expect(ourRequests(room.browser)).toEqual([]);
  expect(await seenErrors(room.browser)).toEqual([]);
});
