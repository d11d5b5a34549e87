import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Driven } from '../../src/cli/demo/driven';
import { ownTexts } from '../../src/text/catalogue/own';
import { folderOf, ourRequests, seenErrors, until } from './hands';
import { openTestedRoom, type Room } from './support/browser';
import { followedClub } from './support/following';
import { type OwnPage, ownPage } from './support/page';

// Two windows that correct one pack at the same time: whatever was kept is kept, and what was typed stands there still.

const club = await followedClub();
const model = club.edition(1).models![0]!;
const files = folderOf({ 'club.pack': await club.sealed(1) });
const ROW = `[data-pack-id="${club.id}"]`;
const part = (name: string) => `[data-part="${name}"]`;
const field = (name: string) => `[data-field="${name}"] input`;

let room: Room<Driven>;
let one: OwnPage;
let other: OwnPage;
beforeAll(async () => {
  room = await openTestedRoom({ packs: false });
  const address = room.browser.addressOf('workbench.html');
  one = ownPage(await room.browser.openTab(address));
  await one.choose(part('pack-file'), `${files}/club.pack`);
  await one.shows(ROW);
  other = ownPage(await room.browser.openWindow(address));
});
afterAll(() => room?.close());

/** By its name, which one of the windows will change. */
async function openEntry(page: OwnPage): Promise<void> {
  await page.click(`${ROW} ${part('own-open')}`);
  await page.fill('#own-sought', model.label);
  await page.click(part('own-entry'), model.label);
  await page.shows(part('own-form'));
}

/** Both at once: neither is waited for before the other has begun. */
const bothPress = () => Promise.all([one.press('Enter'), other.press('Enter')]);
const says = (page: OwnPage, words: string) => page.shows(part('own-changes'), words);

it('two fields at the same time: both windows show both', async () => {
  await openEntry(one);
  await openEntry(other);
  await one.fill(field('number'), '71');
  await other.fill(field('label'), 'Called otherwise');
  await bothPress();
  for (const page of [one, other]) {
    await says(page, 'is now 71');
    await says(page, 'is now Called otherwise');
  }
});

it('the entry stays open in both, though what was sought finds it no more', async () => {
  for (const page of [one, other]) await page.shows(part('own-form'), 'Called otherwise');
});

it('what is being typed stays where the other window corrects something else', async () => {
  await one.fill(field('number'), '72');
  await other.fill(field('label'), 'Called so again');
  await other.press('Enter');
  await says(one, 'is now Called so again');
  expect(await one.valueOf(field('number'))).toBe('72');
  await one.focus(field('number'));
  await one.press('Enter');
  await says(other, 'is now 72');
});

it('one field at the same time: one of them is kept, the other is told and stands in its field still', async () => {
  await one.fill(field('number'), '81');
  await other.fill(field('number'), '82');
  await bothPress();
  const late = async () => {
    const told = await Promise.all([one, other].map((page) => page.count(part('own-wrong'))));
    return told.join() === '1,0' ? one : told.join() === '0,1' ? other : null;
  };
  await until('one of them is told', async () => (await late()) !== null);
  const [mine, theirs] = (await late()) === one ? ['81', '82'] : ['82', '81'];
  const page = (await late())!;
  await page.shows(part('own-wrong'), ownTexts.stale);
  expect(await page.valueOf(field('number'))).toBe(mine);
  for (const each of [one, other]) await says(each, `is now ${theirs}`);
  await page.focus(field('number'));
  await page.press('Enter');
  for (const each of [one, other]) await says(each, `is now ${mine}`);
});

it('none of this made a request or an error', async () => {
  expect(ourRequests(room.browser)).toEqual([]);
  expect(await seenErrors(room.browser)).toEqual([]);
});
