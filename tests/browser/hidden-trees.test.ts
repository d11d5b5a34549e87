import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Driven } from '../../src/cli/demo/driven';
import { type MarketServer, serveMarket } from '../../src/cli/demo/serve-market';
import { panelTexts } from '../../src/text/catalogue/panel';
import { folderOf, ourRequests, press, seenErrors } from './hands';
import { openTestedRoom, type Room } from './support/browser';

// What a page shows from trees that its own document does not hold: closed shadow roots, which the page's own scripts
// can't look into but the extension may, and frames. Those of another origin nobody here can read: they are named.

const TITLE = 'Sewing machine with a hand crank';
const PRICE = '£45';
const WORDS =
  'A full size head of cast iron with its long shuttle, in a case whose lid has one crack. It turns freely and was oiled in spring.';
const HTML = '<!doctype html><html lang="en"><meta charset="utf-8">';
const ADVERT = `<h1>${TITLE}</h1><p class="price">${PRICE}</p><dl><dt>Condition</dt><dd>Used, some rust</dd></dl><h2>Description</h2><p>${WORDS}</p>`;
const half = ADVERT.indexOf('<h2>');
const script = (code: string) => `<script>${code}</script>`;
/** Elements of the page's own, or plain ones, that show their text from a closed root. */
const closed = (host: string, html: string) =>
  `${host}${script(`document.currentScript.previousElementSibling.attachShadow({ mode: 'closed' }).innerHTML = ${JSON.stringify(html).replaceAll('</', '<\\/')};`)}`;

let room: Room<Driven>;
let elsewhere: MarketServer;
beforeAll(async () => {
  elsewhere = await serveMarket(
    folderOf({ 'frame.html': `${HTML}<title>${TITLE}</title>${ADVERT}`, 'counter.html': `${HTML}<p>417 visits</p>` }),
  );
  const frame = (name: string, more = '') =>
    `<iframe width="600" height="400" ${more} src="${elsewhere.origin}/${name}?visit=1"></iframe>`;
  const files = {
    'own-element.html': `<title>${TITLE}</title>${closed('<market-advert></market-advert>', ADVERT)}`,
    'plain-element.html': `<title>${TITLE}</title>${closed('<div></div>', ADVERT)}`,
    'declared.html': `<title>${TITLE}</title><main><template shadowrootmode="closed">${ADVERT}</template></main>`,
    'one-in-another.html': `<title>${TITLE}</title>${ADVERT.slice(0, half)}${closed(
      '<market-tabs></market-tabs>',
      `<market-tab><template shadowrootmode="closed"></template></market-tab><section>${ADVERT.slice(half)}</section>`,
    )}`,
    'slotted.html': `<title>${TITLE}</title>${closed(`<market-advert>${ADVERT}</market-advert>`, '<div><slot></slot></div>')}`,
    'own-frame.html': `<title>${TITLE}</title>${ADVERT.slice(0, half)}<iframe src="words.html"></iframe>`,
    'words.html': `<title>Words</title>${ADVERT.slice(half)}`,
    'foreign-frame.html': `<title>${TITLE}</title>${ADVERT}${frame('counter.html')}`,
    'foreign-and-hidden.html': `<title>${TITLE}</title>${ADVERT}${frame('counter.html', 'hidden')}`,
    'all-in-a-frame.html': `<title>Thrift Shelf</title>${frame('frame.html')}`,
  };
  room = await openTestedRoom({
    market: folderOf(Object.fromEntries(Object.entries(files).map(([name, html]) => [name, `${HTML}${html}`]))),
  });
});
afterAll(async () => {
  await room?.close();
  await elsewhere?.close();
});

/** What the panel shows of a page, all of it unfolded. */
async function readOf(name: string, screen: string): Promise<{ text: string; unread: string[] }> {
  const page = await room.browser.openTab(room.market.addressOf(`${name}.html`));
  // No root of it is open: what is read there, the browser shows to the extension alone.
  expect(
    await page.evaluate(`[...document.querySelectorAll('*')].every(({ shadowRoot }) => shadowRoot === null)`),
  ).toBe(true);
  const panel = await press(room.browser, page, screen);
  await panel.evaluate(`for (const details of document.querySelectorAll('details')) details.open = true; 0`);
  const text = await panel.text();
  const unread = await panel.evaluate<string[], []>(
    `[...document.querySelectorAll('[data-part="unread"]')].map((each) => each.textContent)`,
  );
  await page.close();
  return { text, unread };
}

describe.each([
  ['a closed root of an element of its own', 'own-element'],
  ['a closed root of a plain element', 'plain-element'],
  ['a closed root that the mark-up declares', 'declared'],
  ['a closed root with another one inside', 'one-in-another'],
  ['the slot of a closed root', 'slotted'],
  ['a frame of its own', 'own-frame'],
])('a page that shows its advert in %s', (_what, name) => {
  it('is read as a person sees it', async () => {
    const { text, unread } = await readOf(name, 'audit');
    for (const part of [TITLE, PRICE, 'Used, some rust', WORDS]) expect(text).toContain(part);
    expect(unread).toEqual([]);
  });
});

describe('a frame of another origin', () => {
  const named = (name: string) => panelTexts.read.unread(`${elsewhere.origin.replace('http://', '')}/${name}`);

  it('is named beside the audit, without what it was asked for', async () => {
    const { text, unread } = await readOf('foreign-frame', 'audit');
    expect(unread).toEqual([named('counter.html')]);
    expect(text).not.toContain('417 visits');
  });

  it('is not named where nobody sees it', async () => {
    expect((await readOf('foreign-and-hidden', 'audit')).unread).toEqual([]);
  });

  it('is named where the page has no advert besides it', async () => {
    const { text, unread } = await readOf('all-in-a-frame', 'no-listing');
    expect(unread).toEqual([named('frame.html')]);
    expect(text).not.toContain(PRICE);
  });
});

it('nothing was asked for to read any of it, and none of this made an error', async () => {
  expect(ourRequests(room.browser)).toEqual([]);
  expect(await seenErrors(room.browser)).toEqual([]);
});
