import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Driven } from '../../src/cli/demo/driven';
import { openProposal } from '../../src/sharing/propose/proposal';
import { ownTexts } from '../../src/text/catalogue/own';
import { folderOf, ourRequests, seenErrors } from './hands';
import { isAccessibleAtBothWidths } from './support/at-both-widths';
import { openTestedRoom, type Room } from './support/browser';
import { followedClub } from './support/following';
import { type OwnPage, ownPage } from './support/page';

// What a user corrects of a pack for themselves, from finding an entry to a signed proposal that the command line's own
// reader opens.

const club = await followedClub();
const files = folderOf({ 'club.pack': await club.sealed(1) });
const ROW = `[data-pack-id="${club.id}"]`;
const part = (name: string) => `[data-part="${name}"]`;

let room: Room<Driven>;
let bench: OwnPage;
beforeAll(async () => {
  room = await openTestedRoom({ packs: false });
  bench = await open();
  await bench.choose(part('pack-file'), `${files}/club.pack`);
  await bench.shows(ROW);
});
afterAll(() => room?.close());

const open = async () => ownPage(await room.browser.openTab(room.browser.addressOf('workbench.html')));

async function openEntry(page: OwnPage, sought: string): Promise<void> {
  await page.click(`${ROW} ${part('own-open')}`);
  await page.fill('#own-sought', sought);
  await page.click(part('own-entry'));
  await page.shows(part('own-form'));
}
async function correct(page: OwnPage, field: string, typed: string): Promise<void> {
  await page.fill(`[data-field="${field}"] input`, typed);
  await page.press('Enter');
}

it('a run’s year is corrected by typing it anew, and speaks from then on', async () => {
  await openEntry(bench, 'KD 439114');
  const before = await bench.valueOf('[data-field="year"] input');
  expect(before).toMatch(/^\d{4}$/);
  await correct(bench, 'year', 'never');
  await bench.shows(part('own-wrong'), ownTexts.wrong(before));
  // A year, and none that a pack may hold: with it nothing of what is corrected would speak.
  await correct(bench, 'year', '77777');
  await bench.shows(part('own-wrong'), '77777');
  await bench.lacks(part('own-changes'));
  await correct(bench, 'year', '1901');
  await bench.shows(part('own-changes'), `was ${before}, is now 1901`);
  await bench.click(part('to-enquiry'));
  await bench.fill('#enquiry-serial', 'KD 439114');
  await bench.press('Enter');
  await bench.shows('[data-part="enquiry"][data-verdict="found"]', '1901');
  await bench.click(part('to-packs'));
});

isAccessibleAtBothWidths('own', () => bench);

it('two windows that correct one entry lose no word, and the one that is late is told', async () => {
  await bench.tab.setViewportSize({ width: 1100, height: 800 });
  const other = await open();
  await openEntry(other, 'KD 439114');
  await correct(other, 'place', 'Harrowslade');
  await other.shows(part('own-changes'), 'Harrowslade');
  await bench.shows(part('own-changes'), 'Harrowslade');
  await bench.shows(part('own-changes'), '1901');
  await other.tab.close();
  await bench.tab.bringToFront();
});

it('is there after a reload, and becomes a signed proposal', async () => {
  await bench.reload();
  await bench.click(`${ROW} ${part('own-open')}`);
  await bench.shows(part('own-changes'), '1901');
  await bench.click(part('own-make'));
  await bench.shows(part('own-propose'), ownTexts.propose.nameless);
  await bench.fill('#own-name', 'A member');
  await bench.fill('#own-note', 'The book of the works says so.');
  await bench.click(part('own-make'));
  await bench.shows(part('own-proposal'));
  const proposal = await openProposal(await bench.valueOf('#own-text'));
  expect(proposal).toMatchObject({ pack: club.id, base: { edition: 1 }, author: { name: 'A member' } });
  expect(proposal?.note).toBe('The book of the works says so.');
  expect(proposal?.changes.map((change) => change.do === 'change' && change.now)).toEqual([1901, 'Harrowslade']);
});

it('is taken back, and the pack speaks as it is', async () => {
  await bench.click(part('own-back'));
  await bench.lacks(part('own-changes'));
  await bench.click(part('to-enquiry'));
  await bench.fill('#enquiry-serial', 'KD 439114');
  await bench.press('Enter');
  await bench.shows('[data-part="enquiry"][data-verdict="found"]');
  expect(await bench.text('[data-part="enquiry"]')).not.toContain('1901');
});

it('none of this made a request or an error', async () => {
  expect(ourRequests(room.browser)).toEqual([]);
  expect(await seenErrors(room.browser)).toEqual([]);
});
