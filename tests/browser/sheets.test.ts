import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Driven, Tab } from '../../src/cli/demo/driven';
import type { Panel } from '../../src/cli/demo/panel';
import { sheetLink } from '../../src/session/sheet-link';
import { sheetTexts } from '../../src/text/catalogue/sheet';
import { sheetRoomTexts as texts } from '../../src/text/catalogue/sheet-room';
import { ourRequests, press, seenErrors, until } from './hands';
import { expectAccessible, expectReadable, looksOfTab } from './support/accessible';
import { openTestedRoom, type Room } from './support/browser';
import { keysOf, tabTo } from './support/keyboard';
import { type OwnPage, ownPage } from './support/page';
import { holdSaved } from './support/saved';

// From a German advert in the panel to a sheet for going to see the machine, and its answers back to the advert.

let room: Room<Driven>;
let page: Tab;
let panel: Panel;
let bench: OwnPage;
beforeAll(async () => {
  room = await openTestedRoom();
  page = await room.browser.openTab(room.market.addressOf('nadelbronn-langschiff/page.html'));
  panel = await press(room.browser, page, 'audit');
});
afterAll(() => room?.close());

const FRAME = '[data-check="trade/frame"]';

it('opens from the panel, in the advert’s language, with every caution before the first check', async () => {
  await panel.click('[data-part="make-sheet"]');
  const address = room.browser.addressOf('workbench.html') + sheetLink(page.url());
  bench = ownPage(await room.browser.tabAt(address));
  await bench.shows('[data-part="sheet"][data-language="de"]');
  const text = await bench.text('[data-part="sheet"]');
  for (const caution of sheetTexts.de.cautions) expect(text).toContain(caution);
  await bench.shows('[data-check]', 'Hält ein kleiner Magnet am Arm?');
  await bench.shows(`${FRAME} svg.outline [data-part="mark"]`);
});

it('speaks English when that is chosen', async () => {
  await tabTo(keysOf(bench.tab), '#sheet-language');
  await bench.press('ArrowDown');
  await bench.shows('[data-part="sheet"][data-language="en"]');
  await bench.shows('[data-check]', 'Does a small magnet stick to the arm?');
});

it('takes an answer by keyboard, which the panel beside the advert has at once', async () => {
  await bench.focus(`${FRAME} [data-option="cast-iron"]`);
  await bench.press(' ');
  await bench.shows('[data-part="sheet-answered"]', texts.answered(1, await bench.count('[data-check]')));
  await bench.shows('[data-part="by-now"]');
  await page.bringToFront();
  await panel.waitForSelector('[data-seen="trade/frame"]');
});

it('keeps it with the advert, and gives it back as easily', async () => {
  await bench.tab.bringToFront();
  await bench.reload();
  await bench.shows(`${FRAME} [data-part="clear-answer"]`);
  await bench.click(`${FRAME} [data-part="clear-answer"]`);
  await bench.lacks('[data-part="clear-answer"]');
  await page.bringToFront();
  await panel.waitFor(`!document.querySelector('[data-seen="trade/frame"]')`);
  await bench.tab.bringToFront();
});

it('is a page of its own for a telephone, which runs and loads nothing', async () => {
  await bench.tab.evaluate(holdSaved);
  await bench.click('[data-part="save-sheet"]');
  await bench.shows('body[data-saved]');
  const saved = (await bench.attribute('body', 'data-saved')) ?? '';
  expect(saved).toContain("default-src 'none'");
  expect(saved).toContain('Hält ein kleiner Magnet am Arm?');
  expect(saved).not.toMatch(/<script|<button|src=|href=/);
  await bench.tab.evaluate(() => document.body.removeAttribute('data-saved'));
});

describe.each([
  ['light', 1100],
  ['dark', 360],
] as const)('the sheet, %s, at %s px', (scheme, width) => {
  it('is accessible, and needs no scrolling sideways', async () => {
    await bench.tab.setViewportSize({ width, height: 800 });
    await expectAccessible(looksOfTab(bench.tab), scheme);
    await expectReadable(looksOfTab(bench.tab));
  });
});

it('goes and comes back', async () => {
  await bench.click('[data-part="remove-sheet"]');
  await bench.shows('[data-part="empty"]');
  await until('the way back has the focus', () => bench.isFocused('[data-part="undo-sheet"]'));
  await bench.press('Enter');
  await bench.shows('[data-sheet]');
});

it('none of this made a request or an error', async () => {
  expect(ourRequests(room.browser)).toEqual([]);
  expect(await seenErrors(room.browser)).toEqual([]);
});
