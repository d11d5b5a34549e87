import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Driven, Tab } from '../../src/cli/demo/driven';
import type { Panel } from '../../src/cli/demo/panel';
import { press, seenErrors, waitForScreen } from './hands';
import { openTestedRoom, type Room } from './support/browser';

// What the user sees of a thing, in the real panel: an answer moves the audit, and stays with that advert.

let room: Room<Driven>;
let page: Tab;
let panel: Panel;
beforeAll(async () => {
  room = await openTestedRoom();
  page = await room.browser.openTab(room.market.addressOf('oxlebarrow-honest/page.html'));
  panel = await press(room.browser, page, 'audit');
  await panel.waitForSelector('.asked');
  // Fetched on demand: what is compared below is all there from the first.
  await panel.waitForSelector('.side-by-side');
});
afterAll(() => room?.close());

const textOf = (selector: string) =>
  panel.evaluate(`document.querySelector(${JSON.stringify(selector)})?.textContent ?? ''`);
const likely = () => textOf('[data-part="likely"]');
const seen = (attribute: string) => `[data-seen="${attribute}"]`;
let question = '';
let before = '';

it('asks a drawn question about a thing that could be several', async () => {
  question = (await panel.evaluate(`document.querySelector('.asked').dataset.question`)) as string;
  before = String(await likely());
  expect(question).toMatch(/^trade\//);
  await panel.waitForSelector('svg.outline [data-part="mark"]');
  expect(await panel.evaluate(`document.querySelectorAll('svg.outline [data-part="mark"]').length`)).toBe(1);
});

it('moves the audit by one answer', async () => {
  await panel.click('.answer');
  await panel.waitForSelector(seen(question));
  await panel.waitForSelector('[data-part="settle"][aria-busy="false"]');
  expect(await panel.evaluate(`document.querySelector('.asked')?.dataset.question ?? ''`)).not.toBe(question);
  expect(await likely()).not.toBe(before);
});

it('moves it by one key as well', async () => {
  const second = (await panel.evaluate(`document.querySelector('.asked').dataset.question`)) as string;
  // After an answer the focus is at the next question already.
  await panel.waitFor(`document.activeElement.className === 'question'`);
  await panel.press('0');
  await panel.waitForSelector(seen(second));
});

it('keeps the answers over a reload and another reading', async () => {
  const moved = await likely();
  await page.reload();
  await waitForScreen(panel, 'left');
  await press(room.browser, page, 'audit');
  await panel.waitForSelector(seen(question));
  expect(await likely()).toBe(moved);
});

it('knows nothing of them on another page', async () => {
  const other = await room.browser.openTab(room.market.addressOf('unknown-maker/page.html'));
  await press(room.browser, other, 'audit');
  await panel.waitForSelector('[data-part="settle"]');
  expect(await panel.evaluate(`document.querySelectorAll('[data-seen]').length`)).toBe(0);
  await other.close();
  await page.bringToFront();
  await panel.waitForSelector(seen(question));
});

it('takes them back, and forgets them', async () => {
  for (;;) {
    const attribute = await panel.evaluate(`document.querySelector('[data-seen]')?.dataset.seen ?? ''`);
    if (attribute === '') break;
    await panel.click('[data-seen] button');
    await panel.waitFor(`!document.querySelector('${seen(String(attribute))}')`);
  }
  expect(await likely()).toBe(before);
  await page.reload();
  await waitForScreen(panel, 'left');
  await press(room.browser, page, 'audit');
  await panel.waitForSelector('.asked');
  expect(await panel.evaluate(`document.querySelectorAll('[data-seen]').length`)).toBe(0);
});

it('none of this made an error', async () => {
  expect(await seenErrors(room.browser)).toEqual([]);
});
