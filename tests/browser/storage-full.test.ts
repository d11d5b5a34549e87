import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Driven } from '../../src/cli/demo/driven';
import type { Pack } from '../../src/pack/schema/index';
import { founded, sealPack } from '../../src/sharing/seal/seal';
import { publication } from '../../src/sharing/subscribe/publication';
import { workbenchTexts as texts } from '../../src/text/catalogue/workbench';
import { type PackHost, servePacks } from '../support/pack-host';
import { folderOf, ourRequests, seenErrors } from './hands';
import { openTestedRoom, type Room } from './support/browser';
import { keptOf } from './support/following';
import { type OwnPage, ownPage } from './support/page';

// A browser with little space for all that its pages keep, so that its own refusal is met.
const SPACE = 3_000_000;

const sound = JSON.parse(readFileSync('fixtures/packs/grindlewade-circle.json', 'utf8'));
const ID = sound.about.id as string;
const TOO_MUCH = 6_000_000;
const large = {
  ...sound,
  about: { ...sound.about, edition: sound.about.edition + 1 },
  'x-weight': Array.from({ length: TOO_MUCH / 20 }, (_, i) => `${(i * 2_654_435_761) % 1e15}`.padStart(17, '0')),
};
const files = folderOf({ 'sound.json': JSON.stringify(sound), 'large.json': JSON.stringify(large) });

const keys = (await crypto.subtle.generateKey('Ed25519', true, ['sign', 'verify'])) as CryptoKeyPair;
const own = await founded(sound, keys);

async function publish(pack: Pack, ...before: Pack[]): Promise<void> {
  const files = await publication(await sealPack(pack, keys), before);
  host.put(Object.fromEntries(files.map(({ name, text }) => [name, text])));
}

let room: Room<Driven>;
let host: PackHost;
let bench: OwnPage;
beforeAll(async () => {
  host = await servePacks();
  room = await openTestedRoom({ packs: false, space: SPACE, hosts: ['https://127.0.0.1/*'] });
  bench = ownPage(await room.browser.openTab(room.browser.addressOf('workbench.html')));
  await bench.shows('[data-pack-id="trade"]');
});
afterAll(async () => {
  await room?.close();
  await host?.close();
});

const choose = (name: string) => bench.choose('[data-part="pack-file"]', `${files}/${name}`);
const ROW = `[data-pack-id="${ID}"]`;

it('the browser really has so little space', async () => {
  const refusal = await bench.tab.evaluate(
    (size: number) =>
      new Promise((resolve) => {
        const opening = indexedDB.open('too-much', 1);
        opening.onupgradeneeded = () => opening.result.createObjectStore('all', { autoIncrement: true });
        opening.onsuccess = () => {
          const work = opening.result.transaction('all', 'readwrite');
          // By lot, for what is all the same takes no space.
          const bytes = new Uint8Array(size);
          for (let at = 0; at < size; at += 65_536) crypto.getRandomValues(bytes.subarray(at, at + 65_536));
          work.objectStore('all').put(bytes);
          work.oncomplete = () => resolve(null);
          work.onabort = () => resolve(work.error?.name);
        };
      }),
    TOO_MUCH,
  );
  expect(refusal).toBe('QuotaExceededError');
});

it('a pack that finds room is installed', async () => {
  await choose('sound.json');
  await bench.shows(ROW);
});

it('an edition that finds none is not, says so, and the one before stays whole', async () => {
  await choose('large.json');
  await bench.shows('[data-part="trouble"]', texts.troubles.full);
  expect(await bench.text(ROW)).toContain(`edition ${sound.about.edition}`);
  await bench.reload();
  await bench.shows(ROW);
  expect(await bench.text(ROW)).not.toContain(`edition ${sound.about.edition + 1}`);
  await bench.click('[data-part="to-enquiry"]');
  await bench.fill('#enquiry-serial', 'KD 439114');
  await bench.press('Enter');
  await bench.shows('[data-part="enquiry"][data-verdict="found"]');
});

it('an update of a followed pack that finds none is told likewise, and the edition before stays whole and followed', async () => {
  const followed = `[data-pack-id="${own.about.id}"]`;
  await bench.click('[data-part="to-packs"]');
  await publish(own);
  await bench.fill('#follow-address', `${host.origin}/grindlewade-circle.notice.json`);
  await bench.click('[data-part="follow-look"]');
  await bench.click('[data-part="offer-take"]');
  await bench.shows(`${followed} [data-part="followed"]`);
  const { edition } = own.about;
  await publish({ ...large, about: { ...own.about, edition: edition + 1 } }, own);
  await bench.click(`${followed} [data-part="check"]`);
  await bench.click(`${followed} [data-part="see"]`);
  await bench.shows('[data-part="trouble"]', texts.troubles.full);
  expect(await keptOf(bench.tab, own.about.id)).toMatchObject({ edition, isWhole: true });
  await bench.reload();
  await bench.shows(`${followed} [data-part="followed"][data-finding="newer"]`);
});

it('none of this made an error, and no request but to that host', async () => {
  expect([...new Set(ourRequests(room.browser).map(({ url }) => url))]).toEqual([`${host.origin}/`]);
  expect(await seenErrors(room.browser)).toEqual([]);
});
