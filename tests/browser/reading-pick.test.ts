import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Driven, Tab } from '../../src/cli/demo/driven';
import type { Panel } from '../../src/cli/demo/panel';
import { pickTexts } from '../../src/text/catalogue/picks';
import { folderOf, press, seenErrors, waitForScreen } from './hands';
import { expectAccessible, expectReadable, looksOfPanel } from './support/accessible';
import { openTestedRoom, type Room } from './support/browser';
import { focusIn, tabTo, type } from './support/keyboard';

// An advert whose page shows one price and tells machines another: the user says by keyboard which is right, the audit
// moves, and their word stays with that advert until they take it back or the page changes.

const CLASH = readFileSync('fixtures/market/haddercombe-price-clash/page.html', 'utf8');
const folder = folderOf({ 'advert.html': CLASH });
const MACHINES = '[data-part="pick-price"] [data-reading="json-ld"]';
const CONFLICT = '[data-finding^="source-conflict"]';

let room: Room<Driven>;
let page: Tab;
let panel: Panel;
beforeAll(async () => {
  room = await openTestedRoom({ market: folder });
  page = await room.browser.openTab(room.market.addressOf('advert.html'));
  panel = await press(room.browser, page, 'audit');
});
afterAll(() => room?.close());

const textOf = async (selector: string) =>
  String(await panel.evaluate(`document.querySelector(${JSON.stringify(selector)})?.textContent ?? ''`)).trim();
const isPressed = (selector: string) => panel.waitForSelector(`${selector}[aria-pressed="true"]`);
const said = () => textOf('[data-part="pick-price"] [data-part="pick-said"]');
const readAgain = async () => {
  await page.reload();
  await waitForScreen(panel, 'left');
  await press(room.browser, page, 'audit');
};

it('says at the top what is to be checked, and leads there', async () => {
  expect(await textOf('[data-part="reading-note"]')).toBe(pickTexts.toCheck('price'));
  await panel.waitForSelector(CONFLICT);
  expect(await textOf('[data-part="price"]')).toContain('£450');
  await tabTo(panel, '[data-part="reading-note"] button');
  await panel.press('Enter');
  expect(await panel.evaluate(`document.activeElement.matches('[data-part="pick-price"] > summary')`)).toBe(true);
  await focusIn(panel);
  expect(await textOf('[data-part="pick-price"] > summary')).toBe(pickTexts.check('price'));
});

describe.each([
  ['light', 360],
  ['dark', 360],
  ['light', 260],
  ['dark', 700],
] as const)('the readings to pick from, %s, %i points wide', (scheme, width) => {
  it('are accessible, and nothing stands beyond the edge', async () => {
    await panel.setWidth(width);
    await expectAccessible(looksOfPanel(panel), scheme);
    await expectReadable(looksOfPanel(panel));
    await panel.setWidth(null);
  });
});

it('takes the other reading by one key: the audit moves, and the focus stays', async () => {
  await tabTo(panel, MACHINES);
  await panel.press('Enter');
  await isPressed(MACHINES);
  await panel.waitFor(`!document.querySelector('${CONFLICT}')`);
  expect(await textOf('[data-part="price"]')).toMatch(/£45\b/);
  expect(await said()).toContain(pickTexts.picked('').trim());
  expect(await textOf('[data-part="reading-note"]')).toBe(pickTexts.own('price'));
  expect(await panel.evaluate(`document.activeElement.matches('${MACHINES}')`)).toBe(true);
  await focusIn(panel);
});

it('keeps it with that advert, over a reload and another reading', async () => {
  await readAgain();
  await isPressed(MACHINES);
  expect(await textOf('[data-part="price"]')).toMatch(/£45\b/);
  await expectAccessible(looksOfPanel(panel), 'light');
});

it('says so where the page no longer has that reading, and follows the page', async () => {
  writeFileSync(join(folder, 'advert.html'), CLASH.replace('"45.00"', '"46.00"'));
  await readAgain();
  await panel.waitForSelector('[data-part="unpick"]');
  expect(await said()).toBe(pickTexts.lapsed.gone('45.00 GBP'));
  expect(await textOf('[data-part="price"]')).toContain('£450');
  await expectAccessible(looksOfPanel(panel), 'dark');
});

it('takes a price that is typed, in its place', async () => {
  await tabTo(panel, '[data-part="typed-price"] input');
  await type(panel, '£320');
  await panel.press('Enter');
  await panel.waitFor(`document.querySelector('[data-part="price"]').textContent.includes('£320')`);
  expect(await said()).toContain(pickTexts.typed('').trim());
  expect(await panel.evaluate(`document.querySelectorAll('[data-reading][aria-pressed="true"]').length`)).toBe(0);
});

it('takes it back by one key, and goes on where the field is', async () => {
  await tabTo(panel, '[data-part="unpick"]');
  await panel.press('Enter');
  await panel.waitForSelector(CONFLICT);
  expect(await textOf('[data-part="price"]')).toContain('£450');
  expect(await textOf('[data-part="reading-note"]')).toBe(pickTexts.toCheck('price'));
  expect(await panel.evaluate(`document.activeElement.matches('[data-part="pick-price"] > summary')`)).toBe(true);
  await focusIn(panel);
});

it('has forgotten it then', async () => {
  await readAgain();
  await panel.waitForSelector(CONFLICT);
  expect(await panel.evaluate(`document.querySelector('[data-part="unpick"]')`)).toBeNull();
});

it('none of this made an error', async () => {
  expect(await seenErrors(room.browser)).toEqual([]);
});
