import { readFileSync } from 'node:fs';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Driven } from '../../src/cli/demo/driven';
import { folderOf, ourRequests, seenErrors, until } from './hands';
import { openTestedRoom, type Room } from './support/browser';
import { type OwnPage, ownPage } from './support/page';

// Two windows of the workbench: what is done in one shows in the other, without a reload.

const sound = JSON.parse(readFileSync('fixtures/packs/grindlewade-circle.json', 'utf8'));
const ID = sound.about.id as string;
const files = folderOf({
  'sound.json': JSON.stringify(sound),
  'newer.json': JSON.stringify({ ...sound, about: { ...sound.about, edition: sound.about.edition + 1 } }),
});

let room: Room<Driven>;
let one: OwnPage;
let other: OwnPage;
beforeAll(async () => {
  room = await openTestedRoom({ packs: false });
  one = ownPage(await room.browser.openTab(room.browser.addressOf('workbench.html')));
  other = ownPage(await room.browser.openWindow(room.browser.addressOf('workbench.html')));
  for (const page of [one, other]) await page.shows('[data-pack-id="trade"]');
});
afterAll(() => room?.close());

const ROW = `[data-pack-id="${ID}"]`;
const BOX = `${ROW} input[type="checkbox"]`;
const NAME = '.draft-name';
const field = (name: string) => `#draft-${name}`;
const reads = (page: OwnPage, name: string, value: string) =>
  until(`${name} is “${value}”`, async () => (await page.valueOf(field(name))) === value);

it('a pack that is installed, and the newer edition that takes its place', async () => {
  await one.choose('[data-part="pack-file"]', `${files}/sound.json`);
  await other.shows(ROW, `edition ${sound.about.edition}`);
  await one.shows('[data-part="install-outcome"] p');
  await one.choose('[data-part="pack-file"]', `${files}/newer.json`);
  await other.shows(ROW, `edition ${sound.about.edition + 1}`);
});

it('a pack that is switched off, from either side', async () => {
  await other.click(BOX);
  await one.shows(`${ROW}[data-on="false"] input:not(:checked)`);
  await one.click(BOX);
  await other.shows(`${ROW}[data-on="true"] input:checked`);
});

it('a pack that is removed and put back, and nobody is alarmed', async () => {
  await one.click(`${ROW} [data-part="remove"]`);
  await other.lacks(ROW);
  expect(await other.count('[data-part="trouble"]')).toBe(0);
  await one.click('[data-part="undo"]');
  await other.shows(ROW);
});

it('a draft that is written, changed, removed and put back', async () => {
  for (const page of [one, other]) await page.click('[data-part="to-drafts"]');
  await one.click('[data-part="new-draft"]');
  await one.fill(field('title'), 'Grindlewade Haddercombe');
  await other.click(NAME, 'Grindlewade Haddercombe');
  await one.fill(field('title'), 'Grindlewade Haddercombe, cast iron');
  await reads(other, 'title', 'Grindlewade Haddercombe, cast iron');
  await other.fill(field('priceText'), '£40');
  await reads(one, 'priceText', '£40');
  await one.click('[data-part="remove-draft"]', 'Grindlewade');
  await other.lacks(NAME, 'Grindlewade');
  await one.click('[data-part="undo-draft"]');
  await other.shows(NAME, 'Grindlewade');
});

it('what is being typed is not taken away by what another window does', async () => {
  await other.click(NAME, 'Grindlewade');
  await other.fill(field('description'), 'It runs well and it ');
  await one.click('[data-part="new-draft"]');
  const typing = (async () => {
    for (const character of 'is heavy.') {
      await other.press(character);
      await sleep(60);
    }
  })();
  await one.fill(field('title'), 'Another one');
  await typing;
  await other.shows('[data-kept="kept"]');
  expect(await other.valueOf(field('description'))).toBe('It runs well and it is heavy.');
});

it('none of this made a request or an error', async () => {
  expect(ourRequests(room.browser)).toEqual([]);
  expect(await seenErrors(room.browser)).toEqual([]);
});
