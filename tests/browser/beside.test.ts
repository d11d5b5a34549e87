import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Driven, Tab } from '../../src/cli/demo/driven';
import type { Panel } from '../../src/cli/demo/panel';
import { serveMarket } from '../../src/cli/demo/serve-market';
import { folderOf, ourRequests, press, seenErrors, until } from './hands';
import { expectAccessible, expectReadable, looksOfPanel, looksOfTab } from './support/accessible';
import { openTestedRoom, type Room } from './support/browser';
import { ownPage } from './support/page';
import { holdSaved } from './support/saved';

// Candidates side by side: the packs' pictures at once, the advert's photos when they are asked for, all of it as a page.

let room: Room<Driven>;
let page: Tab;
let panel: Panel;
let saved: string;
beforeAll(async () => {
  room = await openTestedRoom();
  page = await room.browser.openTab(room.market.addressOf('quarrendle-no-number/page.html'));
  panel = await press(room.browser, page, 'audit');
});
afterAll(() => room?.close());

const photoState = () =>
  panel.evaluate<boolean, []>(
    `(() => { const photo = document.querySelector('[data-part="advert-photo"]'); return Boolean(photo?.complete && photo.naturalWidth > 0); })()`,
  );

it('shows the packs’ pictures with whose they are, and what differs before what doesn’t', async () => {
  await panel.waitForSelector('[data-part="beside"]');
  await panel.click('[data-part="beside"] > summary');
  await panel.waitForSelector('[data-pictures="grindlewade-circle/quarrendle"] img');
  expect(await panel.text()).toContain('drawn for the Grindlewade Circle');
  const [first, same] = await panel.evaluate<boolean[], []>(
    `['.side-by-side > .beside tbody', '[data-part="beside-same"] tbody'].map((each) => [...document.querySelectorAll(each)].every((row) => row.dataset.differs === 'true'))`,
  );
  expect([first, same]).toEqual([true, false]);
});

it('asks nobody for the advert’s photos before they are asked for, then once for the one that is shown', async () => {
  expect(ourRequests(room.browser)).toEqual([]);
  // The advert's own page has fetched it already; who has asked for an address is known by address alone.
  const address = room.market.addressOf('quarrendle-no-number/photo-1.svg');
  const asked = () => room.browser.requests().filter(({ url }) => url === address).length;
  const before = asked();
  await panel.click('[data-part="show-photos"]');
  await until('the photo', photoState);
  expect(asked()).toBe(before + 1);
  expect(ourRequests(room.browser).filter(({ url }) => url !== address)).toEqual([]);
});

describe.each(['light', 'dark'] as const)('the comparison, %s', (scheme) => {
  it('is accessible, and nothing stands beyond the edge', async () => {
    await expectAccessible(looksOfPanel(panel), scheme);
    await expectReadable(looksOfPanel(panel));
  });
});

it('is saved as a page that holds all of it', async () => {
  await panel.evaluate(holdSaved);
  await panel.click('[data-part="save-beside"]');
  await panel.waitForSelector('body[data-saved]');
  saved = (await panel.evaluate<string | null, []>(`document.body.getAttribute('data-saved')`)) ?? '';
  expect(saved).toContain('Grindlewade Quarrendle');
});

it('which is accessible itself, runs nothing and loads nothing', async () => {
  const before = room.browser.requests().length;
  const server = await serveMarket(folderOf({ 'beside.html': saved }));
  try {
    const sent = await room.browser.openTab(server.addressOf('beside.html'));
    const shown = ownPage(sent);
    await shown.shows('table');
    const urls = room.browser.requests().slice(before);
    expect(
      urls.filter(({ url, by }) => by !== 'browser' && url.startsWith('http') && !/beside\.html|favicon/.test(url)),
    ).toEqual([]);
    expect(await shown.count('img[src^="data:image/"]')).toBeGreaterThan(0);
    expect(await shown.count('script')).toBe(0);
    // Its own policy lets no checker run in it: what it shows is looked at without.
    const open = await room.browser.openTab(room.market.addressOf('index.html'));
    await open.evaluate((text: string) => {
      const parsed = new DOMParser().parseFromString(text, 'text/html');
      parsed.querySelector('meta[http-equiv]')?.remove();
      document.replaceChild(document.adoptNode(parsed.documentElement), document.documentElement);
    }, saved);
    for (const scheme of ['light', 'dark'] as const) await expectAccessible(looksOfTab(open), scheme);
    await sent.close();
    await open.close();
  } finally {
    await server.close();
  }
});

it('none of this made an error', async () => {
  expect(await seenErrors(room.browser)).toEqual([]);
});
