import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Driven } from '../../src/cli/demo/driven';
import { contentHash } from '../../src/pack/compiled/content-hash';
import type { Pack } from '../../src/pack/schema/index';
import type { Change } from '../../src/sharing/propose/changes';
import { writeProposal } from '../../src/sharing/propose/proposal';
import { workbenchTexts } from '../../src/text/catalogue/workbench';
import { folderOf, ourRequests, seenErrors } from './hands';
import { fillSpace, freeSpace } from './support/ballast';
import { openTestedRoom, type Room } from './support/browser';
import { keptRecords } from './support/kept-records';
import { type OwnPage, ownPage } from './support/page';

// Correcting a pack and keeping one while the browser has no space left: it is said where it was tried, what was kept
// before is whole, and what was typed or decided can be kept once there is space again.

const SPACE = 6_000_000;

const text = readFileSync('fixtures/packs/grindlewade-circle.json', 'utf8');
const demo = JSON.parse(text) as Pack;
const model = demo.models![0]!;
const ID = demo.about.id;
const ROW = `[data-pack-id="${ID}"]`;
const FULL = workbenchTexts.troubles.full;
const PASSPHRASE = 'a shuttle in a drawer';
const part = (name: string) => `[data-part="${name}"]`;
const change = {
  do: 'change',
  part: 'models',
  entry: model.id,
  field: ['number'],
  was: model.number,
  now: 7,
} as Change;
const keys = (await crypto.subtle.generateKey('Ed25519', true, ['sign', 'verify'])) as CryptoKeyPair;
const base = { edition: demo.about.edition, hash: await contentHash(text) };
const files = folderOf({
  'pack.json': text,
  'member.proposal': await writeProposal(
    { pack: ID, base, author: { name: 'A member' }, note: 'From the book. '.repeat(100), changes: [change] },
    keys,
  ),
});

let room: Room<Driven>;
let bench: OwnPage;
beforeAll(async () => {
  room = await openTestedRoom({ packs: false, space: SPACE });
  bench = ownPage(await room.browser.openTab(room.browser.addressOf('workbench.html')));
  await bench.choose(part('pack-file'), `${files}/pack.json`);
  await bench.shows(ROW);
});
afterAll(() => room?.close());

const filled = async () => expect(await fillSpace(bench.tab)).toBeGreaterThan(0);
const kept = () => keptRecords(bench.tab);

it('a correction that finds no room is told, stands in its field still, and is kept once there is some', async () => {
  await bench.click(`${ROW} ${part('own-open')}`);
  await bench.fill('#own-sought', model.label);
  await bench.click(part('own-entry'), model.label);
  await bench.fill('[data-field="label"] input', 'Called otherwise');
  await filled();
  const before = await kept();
  await bench.press('Enter');
  await bench.shows(`${part('own')} ${part('trouble')}`, FULL);
  expect(await bench.valueOf('[data-field="label"] input')).toBe('Called otherwise');
  expect(await kept()).toEqual(before);
  await freeSpace(bench.tab);
  await bench.focus('[data-field="label"] input');
  await bench.press('Enter');
  await bench.shows(part('own-changes'), 'is now Called otherwise');
  await bench.lacks(part('trouble'));
});

it('proposals that find no room are not on the desk, and it is said', async () => {
  await bench.click(`${ROW} ${part('keeper-open')}`);
  await bench.shows(part('publish'));
  await filled();
  const before = await kept();
  await bench.choose(part('proposal-files'), `${files}/member.proposal`);
  await bench.shows(`${part('keeper')} ${part('trouble')}`, FULL);
  expect(await bench.count('[data-slot]')).toBe(0);
  expect(await kept()).toEqual(before);
  await freeSpace(bench.tab);
  await bench.choose(part('proposal-files'), `${files}/member.proposal`);
  await bench.shows('[data-slot]');
  await bench.click(part('accept-all'));
  await bench.shows('[data-slot][data-decided="accept"]');
});

it('an edition that finds no room is none: pack, desk and keys are as they were, and it is sealed later', async () => {
  await filled();
  const before = await kept();
  await bench.fill('#passphrase', PASSPHRASE);
  await bench.click(part('publish-make'));
  await bench.shows(`${part('keeper')} ${part('trouble')}`, FULL);
  expect(await kept()).toEqual(before);
  expect(before.keys).toEqual({});
  await bench.shows(ROW, `edition ${demo.about.edition}`);
  await bench.shows('[data-slot][data-decided="accept"]');
  await freeSpace(bench.tab);
  await bench.click(part('publish-make'));
  await bench.shows(part('published'));
  await bench.lacks(part('trouble'));
  const { packs, layers } = await kept();
  const [[id, pack] = []] = Object.entries(packs ?? {});
  expect(pack?.edition).toBe(demo.about.edition + 1);
  // What the keeper has corrected for themselves goes on over the pack under its new id.
  expect(layers?.[String(id)]?.changes).toHaveLength(1);
});

it('none of this made a request or an error', async () => {
  expect(ourRequests(room.browser)).toEqual([]);
  expect(await seenErrors(room.browser)).toEqual([]);
});
