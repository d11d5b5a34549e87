import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { enquiryTexts as texts } from '../../src/text/catalogue/enquiry';
import { ourErrors, ourRequests, until } from './hands';
import { openRoom, type Room } from './support/browser';

let room: Room;
let bench: Page;
beforeAll(async () => {
  room = await openRoom({ packs: false });
  bench = await room.browser.openTab(room.browser.addressOf('workbench.html#enquiry'));
});
afterAll(() => room?.close());

const verdict = (name: string) => bench.locator(`[data-part="enquiry"][data-verdict="${name}"]`);
async function ask(serial: string): Promise<void> {
  await bench.locator('#enquiry-serial').fill(serial);
  await bench.keyboard.press('Enter');
}

it('says what to do without tables, and takes a pack right there', async () => {
  await bench.locator('[data-part="no-tables"]').waitFor();
  await bench.locator('[data-part="pack-file"]').setInputFiles('fixtures/packs/grindlewade-circle.json');
  await bench.locator('[data-part="ask-form"]').waitFor();
});

it('finds a number by keyboard alone: from the door to the table of its neighbours', async () => {
  await bench.reload();
  await bench.locator('[data-part="ask-form"]').waitFor();
  const tabTo = async (selector: string) => {
    for (let presses = 0; presses < 60; presses += 1) {
      await bench.keyboard.press('Tab');
      if (await bench.evaluate((wanted) => document.activeElement?.matches(wanted), selector)) return;
    }
    throw new Error(`the focus never came to ${selector}`);
  };
  await tabTo('#enquiry-serial');
  await bench.keyboard.type('kd 439-114');
  await bench.keyboard.press('Enter');
  await verdict('found').waitFor();
  const run = await bench.locator('.run').first().textContent();
  for (const each of ['KD433001', 'KD441000', 'Haddercombe', '1955', 'Brindfold dispatch cards'])
    expect(run).toContain(each);
  await tabTo('[data-part="run-table"] > summary');
  await bench.keyboard.press('Enter');
  expect(await bench.locator('.ledger tr[data-holds="true"]').textContent()).toContain('KD433001');
  expect(await bench.locator('.years-holds').count()).toBe(1);
});

it('offers a misread number as it may be meant, and looks that up', async () => {
  await ask('KD 4391I4');
  await verdict('misread').waitFor();
  await bench.locator('.suggestions button', { hasText: texts.tryIt('KD439114') }).click();
  await verdict('found').waitFor();
  expect(await bench.locator('#enquiry-serial').inputValue()).toBe('KD439114');
});

it('shows where a number in no block would stand', async () => {
  await ask('155000');
  await verdict('gap').waitFor();
  expect(await bench.locator('.years-gap').count()).toBe(1);
});

it('shows the forms that are known for a number of none', async () => {
  await ask('QQQ 1');
  await verdict('bad-form').waitFor();
  expect(await bench.locator('[data-part="enquiry"]').textContent()).toContain('6 digits');
});

it('answers anew when the pack is switched off and on', async () => {
  await ask('KD 439114');
  await verdict('found').waitFor();
  const toggle = async () => {
    await bench.locator('[data-part="to-packs"]').click();
    await bench.locator('[data-pack-id="grindlewade-circle"] input[type="checkbox"]').click();
    await bench.locator('[data-part="to-enquiry"]').click();
  };
  await toggle();
  await bench.locator('[data-part="no-tables"]').waitFor();
  await toggle();
  await until('it is found again', () => verdict('found').isVisible());
});

it('none of this made a request or an error', () => {
  expect(ourRequests(room.browser)).toEqual([]);
  expect(ourErrors(room.browser)).toEqual([]);
});
