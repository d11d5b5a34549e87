import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Driven } from '../../src/cli/demo/driven';
import { rememberedTexts as texts } from '../../src/text/catalogue/remembered';
import { folderOf, ourRequests, seenErrors, until } from './hands';
import { isAccessibleAtBothWidths } from './support/at-both-widths';
import { openTestedRoom, type Room } from './support/browser';
import { followedClub } from './support/following';
import { keysOf, tabTo } from './support/keyboard';
import { type OwnPage, ownPage } from './support/page';

// What is remembered of a sealed pack that is gone: seen, forgotten and remembered again, by keyboard, and what that means
// for an earlier edition of it.

const club = await followedClub();
const files = folderOf({
  'first.pack': await club.sealed(1),
  'second.pack': await club.sealed(2),
  'over.pack': await club.sealed(3, '2020-01-31'),
});
const ROW = `[data-pack-id="${club.id}"]`;
const REMEMBERED = `[data-remembered="${club.id}"]`;
const part = (name: string) => `[data-part="${name}"]`;

let room: Room<Driven>;
let bench: OwnPage;
beforeAll(async () => {
  room = await openTestedRoom({ packs: false });
  bench = ownPage(await room.browser.openTab(room.browser.addressOf('workbench.html')));
  await bench.shows('[data-pack-id="trade"]');
});
afterAll(() => room?.close());

const choose = (name: string) => bench.choose(part('pack-file'), `${files}/${name}.pack`);
const focusOn = (selector: string) => until(`the focus on ${selector}`, () => bench.isFocused(selector));

it('a pack that is taken off the shelf is told as one that was here', async () => {
  await choose('second');
  await bench.shows(ROW, 'edition 2');
  await bench.lacks(part('remembered'));
  await bench.click(`${ROW} ${part('remove')}`);
  await bench.shows(REMEMBERED, texts.upTo(2));
  await bench.shows(part('remembered'), texts.means);
});

it('while it is remembered an earlier edition comes only on purpose', async () => {
  await choose('first');
  await bench.shows(part('going-back'));
  await bench.click(part('leave-it'));
  await bench.lacks(part('going-back'));
});

isAccessibleAtBothWidths('remembered', () => bench);

it('is forgotten and remembered again by keyboard, and the focus goes on where that can be undone', async () => {
  const keys = keysOf(bench.tab);
  await tabTo(keys, `${REMEMBERED} ${part('forget')}`);
  await bench.press('Enter');
  await focusOn(part('undo-forget'));
  await bench.lacks(REMEMBERED);
  await bench.press('Enter');
  await bench.shows(REMEMBERED);
  await focusOn('#remembered');
  await choose('first');
  await bench.shows(part('going-back'));
  await bench.click(part('leave-it'));
});

it('forgotten, also for the other windows, an earlier edition is a first one', async () => {
  const other = ownPage(await room.browser.openTab(room.browser.addressOf('workbench.html')));
  await other.shows(REMEMBERED);
  await other.click(`${REMEMBERED} ${part('forget')}`);
  await bench.lacks(REMEMBERED);
  await other.tab.close();
  await choose('first');
  await bench.shows(ROW, 'edition 1');
  expect(await bench.count(part('going-back'))).toBe(0);
});

it('an edition whose last day has passed says so on the shelf', async () => {
  await choose('over');
  await bench.shows(`${ROW} ${part('over')}`, '2020-01-31');
});

it('none of this made a request or an error', async () => {
  expect(ourRequests(room.browser)).toEqual([]);
  expect(await seenErrors(room.browser)).toEqual([]);
});
