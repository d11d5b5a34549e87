import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Driven } from '../../src/cli/demo/driven';
import { outdatedTexts } from '../../src/text/catalogue/outdated';
import { ourRequests, seenErrors, until } from './hands';
import { openTestedRoom, type Room } from './support/browser';
import { holdTimers, letTimersGo } from './support/held-timers';
import { type OwnPage, ownPage } from './support/page';

// Two windows that write in one draft, and a window that loses its program in the middle of a word: no word is lost.

const TITLE = '#draft-title';

let room: Room<Driven>;
let one: OwnPage;
let other: OwnPage;
beforeAll(async () => {
  room = await openTestedRoom({ packs: false });
  const address = room.browser.addressOf('workbench.html#drafts');
  one = ownPage(await room.browser.openTab(address));
  other = ownPage(await room.browser.openWindow(address));
  await one.click('[data-part="new-draft"]');
  await one.fill(TITLE, 'Sewing machine');
  await other.click('.draft-name', 'Sewing machine');
});
afterAll(() => room?.close());

/** Milliseconds; no pause after a keystroke is shorter, and what draws a page waits for less. */
const PAUSES = 200;
const hold = (...pages: OwnPage[]) => Promise.all(pages.map(({ tab }) => holdTimers(tab, PAUSES)));
const letGo = (...pages: OwnPage[]) => Promise.all(pages.map(({ tab }) => letTimersGo(tab)));

const names = (page: OwnPage) => page.texts('.draft-name');
const isKept = (page: OwnPage) => page.shows('[data-kept="kept"]');
const reads = (page: OwnPage, title: string) =>
  until(`the title is “${title}”`, async () => (await page.valueOf(TITLE)) === title);
const lists = (page: OwnPage, titles: string[]) =>
  until(`drafts ${titles.join(' | ')}`, async () => [...(await names(page))].sort().join() === titles.join());

/** Goes on writing at the end of the title, with a pause after each letter. */
async function writeOn(page: OwnPage, text: string): Promise<void> {
  await page.focus(TITLE);
  await page.press('End');
  for (const character of text) {
    await page.press(character);
    await sleep(40);
  }
}

it('one after the other, they write the same draft, and each follows the other', async () => {
  await one.fill(TITLE, 'Sewing machine, cast iron');
  await reads(other, 'Sewing machine, cast iron');
  await other.fill(TITLE, 'Sewing machine, cast iron, treadle');
  await reads(one, 'Sewing machine, cast iron, treadle');
  expect(await names(one)).toEqual(['Sewing machine, cast iron, treadle']);
});

it('at the same time, both are kept, it is said, and whoever writes goes on where he was', async () => {
  // However slowly their keys come through: neither pauses before both have begun. From then on, all goes as it may.
  await hold(one, other);
  await Promise.all([writeOn(one, ', r'), writeOn(other, ', h')]);
  await letGo(one, other);
  await Promise.all([writeOn(one, 'uns well'), writeOn(other, 'eavy as lead')]);
  const begun = 'Sewing machine, cast iron, treadle';
  const both = [`${begun}, heavy as lead`, `${begun}, runs well`];
  for (const page of [one, other]) await isKept(page);
  for (const page of [one, other]) await lists(page, both);
  await reads(one, both[1] as string);
  await reads(other, both[0] as string);
  const told = [one, other].map((page) => page.count('[data-part="parted"]'));
  expect((await Promise.all(told)).sort()).toEqual([0, 1]);

  await Promise.all([writeOn(one, ' indeed'), writeOn(other, ' indeed')]);
  const later = both.map((name) => `${name} indeed`);
  for (const page of [one, other]) await isKept(page);
  for (const page of [one, other]) await lists(page, later);
});

it('removed in one window while it is written in the other, it stays', async () => {
  const mine = await other.valueOf(TITLE);
  await hold(other);
  await writeOn(other, ', and sews');
  await one.click('[data-part="remove-draft"]', mine);
  await until('it is no longer listed', async () => !(await names(one)).includes(mine));
  await letGo(other);
  await isKept(other);
  await until('it is listed', async () => (await names(one)).includes(`${mine}, and sews`));
});

it('a window that loses its program keeps the last word, and says so', async () => {
  // It is the loss that has the word kept, before any pause.
  await hold(other);
  await other.fill(TITLE, 'The last word');
  await reads(other, 'The last word');
  // What the calls of such a page fail with; browsers close these pages as a rule, so that none can be had here.
  await other.tab.evaluate(() => void Promise.reject(new Error('Extension context invalidated.')));
  await other.shows('[data-screen="outdated"]', outdatedTexts.workbench);
  await other.click('button');
  await other.shows('.draft-name', 'The last word');
});

it('none of this made a request or an error, save the one that was made on purpose', async () => {
  expect(ourRequests(room.browser)).toEqual([]);
  const errors = await seenErrors(room.browser);
  expect(errors.filter(({ text }) => !text.includes('context invalidated'))).toEqual([]);
});
