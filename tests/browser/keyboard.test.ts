import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Driven, Tab } from '../../src/cli/demo/driven';
import type { Panel } from '../../src/cli/demo/panel';
import { panelTexts } from '../../src/text/catalogue/panel';
import { press, seenErrors, until } from './hands';
import { openTestedRoom, type Room } from './support/browser';
import { chooseFile, focusIn, type Keys, keysOf, missedByTab, tabTo, type } from './support/keyboard';

// The whole job by keyboard alone, after the press of the toolbar button: a pack, an advert, a draft, a number. At each
// stop on the way the focus has to be in sight.

const PACK = 'fixtures/packs/grindlewade-circle.json';
const ID = JSON.parse(readFileSync(PACK, 'utf8')).about.id as string;

let room: Room<Driven>;
let bench: Tab;
let keys: Keys;
let page: Tab;
let panel: Panel;
beforeAll(async () => {
  room = await openTestedRoom({ packs: false });
  bench = await room.browser.openTab(room.browser.addressOf('workbench.html'));
  keys = keysOf(bench);
  await bench.waitForSelector('[data-pack-id]', { state: 'attached' });
});
afterAll(() => room?.close());

const there = (selector: string) => bench.waitForSelector(selector, { state: 'attached' });
const focused = (selector: string) => `document.activeElement?.matches(${JSON.stringify(selector)}) === true`;

it('installs a pack from a file', async () => {
  await tabTo(keys, '[data-part="pack-file"]');
  await chooseFile(bench, '[data-part="pack-file"]', PACK);
  await there(`[data-pack-id="${ID}"]`);
  // The list above is longer by a pack; what has the focus is brought back into sight.
  await until('the outcome', async () =>
    Boolean(await bench.evaluate(`!!document.querySelector('[data-part="install-outcome"] p')`)),
  );
  expect((await focusIn(keys)).at).toContain('pack-file');
  expect(await missedByTab(keys)).toEqual([]);
});

it('switches it off and on, and the focus stays', async () => {
  const box = `[data-pack-id="${ID}"] input[type="checkbox"]`;
  const isOn = (on: boolean) =>
    until(`the pack is ${on ? 'on' : 'off'}`, async () =>
      Boolean(await bench.evaluate(`document.querySelector('[data-pack-id="${ID}"]').dataset.on === '${on}'`)),
    );
  await tabTo(keys, box);
  await bench.keyboard.press(' ');
  await isOn(false);
  await bench.keyboard.press(' ');
  await isOn(true);
  expect(await bench.evaluate(focused(box))).toBe(true);
});

it('takes it off and puts it back, and goes on where it can be undone', async () => {
  await tabTo(keys, `[data-pack-id="${ID}"] [data-part="remove"]`);
  await bench.keyboard.press('Enter');
  await until('the way back has the focus', async () => Boolean(await bench.evaluate(focused('[data-part="undo"]'))));
  await bench.keyboard.press('Enter');
  await there(`[data-pack-id="${ID}"]`);
  await until('the list has the focus', async () => Boolean(await bench.evaluate(focused('#shelf'))));
});

it('opens "how do we know?" of a finding in the panel', async () => {
  page = await room.browser.openTab(room.market.addressOf('oxlebarrow-honest/page.html'));
  panel = await press(room.browser, page, 'audit');
  await panel.waitForSelector('.asked');
  await tabTo(panel, '[data-part="how"] > summary, [data-part="how-likely"] > summary');
  await panel.press('Enter');
  await panel.waitFor('document.activeElement.parentElement.open');
});

it('answers the question there, and goes on at the next one', async () => {
  const question = (await panel.evaluate(`document.querySelector('.asked').dataset.question`)) as string;
  await tabTo(panel, '[data-answer]');
  await panel.press('Enter');
  await panel.waitForSelector(`[data-seen="${question}"]`);
  await panel.waitForSelector('[data-part="settle"][aria-busy="false"]');
  expect(await panel.evaluate(focused('.question'))).toBe(true);
});

it('takes the answer back, and goes on at the question', async () => {
  await tabTo(panel, '[data-seen] button');
  await panel.press('Enter');
  await panel.waitFor(`!document.querySelector('[data-seen]')`);
  await panel.waitForSelector('[data-part="settle"][aria-busy="false"]');
  expect(await panel.evaluate(focused('.question'))).toBe(true);
});

it('copies the message to the seller', async () => {
  await tabTo(panel, '[data-part="copy"]');
  await panel.press('Enter');
  await panel.waitFor(
    `document.querySelector('[data-part="copy-outcome"]').textContent === ${JSON.stringify(panelTexts.questions.copied)}`,
  );
  expect(await panel.evaluate(focused('[data-part="copy"]'))).toBe(true);
  const message = await panel.evaluate(`document.querySelector('[data-part="message"] textarea').value`);
  expect(await room.browser.copied()).toBe(message);
  await page.bringToFront();
  await panel.waitForSelector('[data-part="copy"]');
});

it('comes to everything in the panel, and is trapped nowhere', async () => {
  await panel.evaluate(`for (const details of document.querySelectorAll('details')) details.open = true; 0`);
  expect(await missedByTab(panel)).toEqual([]);
});

it('writes a draft, and moves from a mark to its finding', async () => {
  await bench.bringToFront();
  await tabTo(keys, '[data-part="to-drafts"]');
  await bench.keyboard.press('Enter');
  await there('[data-part="new-draft"]');
  await tabTo(keys, '[data-part="new-draft"]');
  await bench.keyboard.press('Enter');
  await until('the title has the focus', async () => Boolean(await bench.evaluate(focused('#draft-title'))));
  await focusIn(keys);
  await type(keys, 'Grindlewade Haddercombe with free arm');
  await there('.mark-links [data-standing="disproved"] a');
  await tabTo(keys, '.mark-links [data-standing="disproved"] a');
  await bench.keyboard.press('Enter');
  expect(await bench.evaluate(focused('[data-finding][data-standing="disproved"]'))).toBe(true);
  await focusIn(keys);
  expect(await missedByTab(keys)).toEqual([]);
});

it('deletes the draft and brings it back, and the focus is never lost', async () => {
  await tabTo(keys, '[data-part="remove-draft"]');
  await bench.keyboard.press('Enter');
  await until('the way back has the focus', async () => (await focusIn(keys)).at.includes('undo-draft'));
  await bench.keyboard.press('Enter');
  await there('.draft-name');
  await until('the list has the focus', async () => Boolean(await bench.evaluate(focused('#drafts'))));
});

it('asks by a serial number', async () => {
  await tabTo(keys, '[data-part="to-enquiry"]');
  await bench.keyboard.press('Enter');
  await there('#enquiry-serial');
  await there('.question');
  await tabTo(keys, '#enquiry-serial');
  await type(keys, 'KD 439114');
  await bench.keyboard.press('Enter');
  await there('[data-part="enquiry"][data-verdict="found"]');
  await there('[data-part="machine"][data-pending="false"]');
  expect((await focusIn(keys)).at).toContain('enquiry-serial');
  expect(await missedByTab(keys)).toEqual([]);
});

it('none of this made an error', async () => {
  expect(await seenErrors(room.browser)).toEqual([]);
});
