import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Driven, Tab } from '../../src/cli/demo/driven';
import type { Panel } from '../../src/cli/demo/panel';
import { outdatedTexts } from '../../src/text/catalogue/outdated';
import { press, seenErrors, waitForScreen } from './hands';
import { expectAccessible, expectReadable, looksOfPanel } from './support/accessible';
import { openTestedRoom, type Room } from './support/browser';
import { OWN_PAGE } from './support/differences';

// Every screen of the panel, held to WCAG 2.2 AA as far as axe-core can tell, light and dark.

let room: Room<Driven>;
let page: Tab;
let panel: Panel;
beforeAll(async () => {
  room = await openTestedRoom();
});
afterAll(() => room?.close());

const open = (name: string) => room.browser.openTab(room.market.addressOf(`${name}/page.html`));
const pressOn = async (screen: string) => {
  panel = await press(room.browser, page, screen);
};

/** The page that a press is to find, put in the place of an advert's. */
const become = (title: string, text: string) =>
  page.evaluate(
    ([heading, words]: string[]) => {
      document.title = heading ?? '';
      const [h1, p] = ['h1', 'p'].map((name) => document.createElement(name)) as [HTMLElement, HTMLElement];
      h1.textContent = heading ?? '';
      p.textContent = words ?? '';
      document.head.replaceChildren();
      document.body.replaceChildren(...(heading ? [h1, p] : []));
    },
    [title, text],
  );

/** In this order, for one state leads to the next. */
const SCREENS: [name: string, reach: () => Promise<void>][] = [
  [
    'an audit with something that does not hold',
    async () => {
      page = await open('wendelow-industrial-zigzag');
      await pressOn('audit');
    },
  ],
  [
    'the page was left',
    async () => {
      await page.reload();
      await waitForScreen(panel, 'left');
    },
  ],
  [
    'an audit with what it most likely is, and what would settle it',
    async () => {
      await page.close();
      page = await open('oxlebarrow-honest');
      await pressOn('audit');
      for (const part of ['likely', 'settle']) await panel.waitForSelector(`[data-part="${part}"]`);
      await panel.waitForSelector('.asked');
    },
  ],
  [
    'a question answered',
    async () => {
      await panel.click('.answer');
      await panel.waitForSelector('[data-seen]');
      await panel.waitForSelector('[data-part="settle"][aria-busy="false"]');
    },
  ],
  [
    'a list of adverts',
    async () => {
      await page.close();
      page = await open('adverts-list');
      await pressOn('list');
    },
  ],
  [
    'nothing for sale',
    async () => {
      await become('', '');
      await pressOn('no-listing');
    },
  ],
  [
    'a thing that no pack speaks of',
    async () => {
      await become('Gentleman’s bicycle', 'Three gears, rides well. Price: £40');
      await pressOn('no-pack');
    },
  ],
  [
    'nothing read yet',
    async () => {
      await page.close();
      page = await room.browser.openTab(OWN_PAGE);
      await waitForScreen(panel, 'waiting');
    },
  ],
  ['a page that may not be read', () => pressOn('refused')],
];

describe.each(SCREENS)('the panel: %s', (_name, reach) => {
  beforeAll(reach);

  it.each(['light', 'dark'] as const)('is accessible as far as axe-core can tell, %s', async (scheme) => {
    await expectAccessible(looksOfPanel(panel), scheme);
  });

  it('is large enough to read and to hit, and nothing stands beyond its edge', async () => {
    await expectReadable(looksOfPanel(panel));
  });
});

it('a panel that has outlived its program says so, and what to press', async () => {
  await page.close();
  page = await open('wendelow-industrial-zigzag');
  await pressOn('audit');
  // What the calls of such a page fail with; browsers close these pages as a rule, so that none can be had here.
  await panel.evaluate(() => void Promise.reject(new Error('Extension context invalidated.')));
  await waitForScreen(panel, 'outdated');
  expect(await panel.text()).toContain(outdatedTexts.panel);
  for (const scheme of ['light', 'dark'] as const) await expectAccessible(looksOfPanel(panel), scheme);
  await page.close();
});

it('none of this made an error, save the one that was made on purpose', async () => {
  const errors = await seenErrors(room.browser);
  expect(errors.filter(({ text }) => !text.includes('context invalidated'))).toEqual([]);
});
