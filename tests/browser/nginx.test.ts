import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Driven } from '../../src/cli/demo/driven';
import { type Nginx, startNginx } from '../support/nginx';
import { seenErrors } from './hands';
import { openTestedRoom, type Room } from './support/browser';
import { followedClub } from './support/following';
import { type OwnPage, ownPage } from './support/page';

// Following a pack on nginx as Debian packages it, with a certificate made for this run: the browser's own cache stands
// between, which nginx tells to keep everything for an hour, with validators and a cookie to know it by.

const club = await followedClub();
const ROW = `[data-pack-id="${club.id}"]`;
const part = (name: string) => `[data-part="${name}"]`;

let room: Room<Driven>;
let nginx: Nginx;
let bench: OwnPage;
beforeAll(async () => {
  nginx = await startNginx({ tls: true });
  room = await openTestedRoom({ packs: false, hosts: ['https://127.0.0.1/*'] });
  bench = ownPage(await room.browser.openTab(room.browser.addressOf('workbench.html')));
}, 300_000);
afterAll(async () => {
  await room?.close();
  await nginx?.close();
});

const TOLD_NOTHING = '- - - - - - -';
/** What was asked for, hashes left out; each of it wholly, by somebody of whom nothing is known. */
function asked(): string[] {
  const log = nginx.log();
  expect(log.map(({ status, told }) => `${status} ${told}`)).toEqual(log.map(() => `200 ${TOLD_NOTHING}`));
  return log.map(({ request }) =>
    request.replace(/^GET \/([0-9a-f]{64})?(.*) HTTP\/1\.1$/, (_all, hash, rest) => (hash ? '#' : '') + rest),
  );
}

it('a pack is taken from there', async () => {
  nginx.put(await club.published(1));
  await bench.fill('#follow-address', `${nginx.origin}/${club.notice}`);
  await bench.click(part('follow-look'));
  await bench.click(part('offer-take'));
  await bench.shows(`${ROW} ${part('followed')}[data-finding="same"]`);
  expect(asked()).toEqual([club.notice, '#.pack']);
});

it('a newer edition is seen at once, for nothing is answered from a cache, and nothing is asked under a condition', async () => {
  await bench.click(`${ROW} ${part('check')}`);
  await bench.shows(`${ROW} ${part('followed')}[data-checking="false"]`);
  nginx.put(await club.published(2));
  await bench.click(`${ROW} ${part('check')}`);
  await bench.shows(`${ROW} ${part('followed')}[data-finding="newer"]`);
  await bench.click(`${ROW} ${part('see')}`);
  await bench.shows(part('offer-changes'));
  await bench.click(part('offer-take'));
  await bench.shows(ROW, 'edition 2');
  expect(asked()).toEqual([club.notice, club.notice, club.notice, '#.changes']);
});

it('none of this made an error', async () => {
  expect(await seenErrors(room.browser)).toEqual([]);
});
