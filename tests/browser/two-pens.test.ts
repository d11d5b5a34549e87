import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { outdatedTexts } from '../../src/text/catalogue/outdated';
import { ourErrors, ourRequests } from './hands';
import { openRoom, type Room } from './support/browser';

// Two windows that write in one draft, and a window that loses its program in the middle of a word: no word is lost.

let room: Room;
let one: Page;
let other: Page;
beforeAll(async () => {
  room = await openRoom({ packs: false });
  const address = room.browser.addressOf('workbench.html#drafts');
  one = await room.browser.openTab(address);
  other = await room.browser.openWindow(address);
  await one.locator('[data-part="new-draft"]').click();
  await one.locator('#draft-title').fill('Sewing machine');
  await other.locator('.draft-name', { hasText: 'Sewing machine' }).click();
});
afterAll(() => room?.close());

const title = (page: Page) => page.locator('#draft-title');
const names = (page: Page) => page.locator('.draft-name').allTextContents();
const isKept = (page: Page) => page.locator('[data-kept="kept"]').waitFor();

it('one after the other, they write the same draft, and each follows the other', async () => {
  await title(one).fill('Sewing machine, cast iron');
  await expect.poll(() => title(other).inputValue()).toBe('Sewing machine, cast iron');
  await title(other).fill('Sewing machine, cast iron, treadle');
  await expect.poll(() => title(one).inputValue()).toBe('Sewing machine, cast iron, treadle');
  expect(await names(one)).toEqual(['Sewing machine, cast iron, treadle']);
});

it('at the same time, both are kept, it is said, and whoever writes goes on where he was', async () => {
  for (const page of [one, other]) await title(page).press('End');
  await Promise.all([
    title(one).pressSequentially(', runs well', { delay: 40 }),
    title(other).pressSequentially(', heavy as lead', { delay: 40 }),
  ]);
  const begun = 'Sewing machine, cast iron, treadle';
  const both = [`${begun}, heavy as lead`, `${begun}, runs well`];
  for (const page of [one, other]) await isKept(page);
  for (const page of [one, other]) await expect.poll(async () => [...(await names(page))].sort()).toEqual(both);
  expect(await title(one).inputValue()).toBe(both[1]);
  expect(await title(other).inputValue()).toBe(both[0]);
  const told = [one, other].map((page) => page.locator('[data-part="parted"]').count());
  expect((await Promise.all(told)).sort()).toEqual([0, 1]);

  await Promise.all([title(one).pressSequentially(' indeed'), title(other).pressSequentially(' indeed')]);
  const later = both.map((name) => `${name} indeed`);
  for (const page of [one, other]) await isKept(page);
  for (const page of [one, other]) await expect.poll(async () => [...(await names(page))].sort()).toEqual(later);
});

it('removed in one window while it is written in the other, it stays', async () => {
  const mine = await title(other).inputValue();
  const row = one.locator('.draft-row', { hasText: mine });
  await Promise.all([row.locator('[data-part="remove-draft"]').click(), title(other).fill(`${mine}, and sews`)]);
  await isKept(other);
  await expect.poll(() => names(one)).toContain(`${mine}, and sews`);
});

it('a window that loses its program keeps the last word, and says so', async () => {
  await title(other).fill('The last word');
  // What the calls of such a page fail with; browsers close these pages as a rule, so that none can be had here.
  await other.evaluate(() => void Promise.reject(new Error('Extension context invalidated.')));
  await other.locator('[data-screen="outdated"]').waitFor();
  expect(await other.locator('body').textContent()).toContain(outdatedTexts.workbench);
  await other.locator('button').click();
  await other.locator('.draft-name', { hasText: 'The last word' }).waitFor();
});

it('none of this made a request or an error, save the one that was made on purpose', () => {
  expect(ourRequests(room.browser)).toEqual([]);
  expect(ourErrors(room.browser).filter((each) => !JSON.stringify(each).includes('context invalidated'))).toEqual([]);
});
