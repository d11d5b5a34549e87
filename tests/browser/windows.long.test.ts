import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { folderOf, ourErrors, ourRequests } from './hands';
import { openRoom, type Room } from './support/browser';

// Two windows of the workbench: what is done in one shows in the other, without a reload.

const sound = JSON.parse(readFileSync('fixtures/packs/grindlewade-circle.json', 'utf8'));
const ID = sound.about.id as string;
const files = folderOf({
  'sound.json': JSON.stringify(sound),
  'newer.json': JSON.stringify({ ...sound, about: { ...sound.about, edition: sound.about.edition + 1 } }),
});

let room: Room;
let one: Page;
let other: Page;
beforeAll(async () => {
  room = await openRoom({ packs: false });
  one = await room.browser.openTab(room.browser.addressOf('workbench.html'));
  other = await room.browser.openWindow(room.browser.addressOf('workbench.html'));
  for (const page of [one, other]) await page.locator('[data-pack-id="trade"]').waitFor();
});
afterAll(() => room?.close());

const row = (page: Page, id = ID) => page.locator(`[data-pack-id="${id}"]`);
const box = (page: Page) => row(page).locator('input[type="checkbox"]');
const troubles = (page: Page) => page.locator('[data-part="trouble"]').count();

it('a pack that is installed, and the newer edition that takes its place', async () => {
  await one.locator('[data-part="pack-file"]').setInputFiles(`${files}/sound.json`);
  await row(other).waitFor();
  await one.locator('[data-part="install-outcome"] p').waitFor();
  await one.locator('[data-part="pack-file"]').setInputFiles(`${files}/newer.json`);
  await row(other, ID)
    .filter({ hasText: String(sound.about.edition + 1) })
    .waitFor();
});

it('a pack that is switched off, from either side', async () => {
  await box(other).click();
  await row(one).locator('input:not(:checked)').waitFor();
  await box(one).click();
  await row(other).locator('input:checked').waitFor();
});

it('a pack that is removed and put back, and nobody is alarmed', async () => {
  await row(one).locator('[data-part="remove"]').click();
  await row(other).waitFor({ state: 'detached' });
  expect(await troubles(other)).toBe(0);
  await one.locator('[data-part="undo"]').click();
  await row(other).waitFor();
});

it('a draft that is written, changed, removed and put back', async () => {
  for (const page of [one, other]) await page.locator('[data-part="to-drafts"]').click();
  await one.locator('[data-part="new-draft"]').click();
  await one.locator('#draft-title').fill('Grindlewade Haddercombe');
  const listed = (title: string) => other.locator('.shelf', { hasText: title });
  await listed('Grindlewade Haddercombe').waitFor();
  await other.locator('.shelf button', { hasText: 'Grindlewade Haddercombe' }).first().click();
  await one.locator('#draft-title').fill('Grindlewade Haddercombe, cast iron');
  await expect.poll(() => other.locator('#draft-title').inputValue()).toBe('Grindlewade Haddercombe, cast iron');
  await other.locator('#draft-priceText').fill('£40');
  await expect.poll(() => one.locator('#draft-priceText').inputValue()).toBe('£40');
  await one.locator('.shelf [data-part="remove-draft"]').first().click();
  await listed('Grindlewade').waitFor({ state: 'detached' });
  await one.locator('[data-part="undo-draft"]').click();
  await listed('Grindlewade').waitFor();
});

it('what is being typed is not taken away by what another window does', async () => {
  await other.locator('.shelf button', { hasText: 'Grindlewade' }).first().click();
  await other.locator('#draft-description').pressSequentially('It runs well and it ', { delay: 20 });
  await one.locator('[data-part="new-draft"]').click();
  const typing = other.locator('#draft-description').pressSequentially('is heavy.', { delay: 60 });
  await one.locator('#draft-title').fill('Another one');
  await typing;
  await other.locator('[data-kept="kept"]').waitFor();
  expect(await other.locator('#draft-description').inputValue()).toBe('It runs well and it is heavy.');
});

it('none of this made a request or an error', () => {
  expect(ourRequests(room.browser)).toEqual([]);
  expect(ourErrors(room.browser)).toEqual([]);
});
