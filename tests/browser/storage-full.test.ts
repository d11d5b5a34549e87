import { mkdirSync, readFileSync, statfsSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { workbenchTexts as texts } from '../../src/text/catalogue/workbench';
import { folderOf, ourErrors, ourRequests } from './hands';
import { openRoom, type Room } from './support/browser';

// A browser with little space for all that its pages keep, so that its own refusal is met. What a page of the tools may
// set (Storage.overrideQuotaForOrigin) reaches no extension: a share of the disk is set as the browser starts.
const SPACE = 3_000_000;
mkdirSync('.test', { recursive: true });
const disk = statfsSync('.test');
const share = SPACE / (disk.blocks * disk.bsize);

const sound = JSON.parse(readFileSync('fixtures/packs/grindlewade-circle.json', 'utf8'));
const ID = sound.about.id as string;
const TOO_MUCH = 6_000_000;
const large = {
  ...sound,
  about: { ...sound.about, edition: sound.about.edition + 1 },
  'x-weight': Array.from({ length: TOO_MUCH / 20 }, (_, i) => `${(i * 2_654_435_761) % 1e15}`.padStart(17, '0')),
};
const files = folderOf({ 'sound.json': JSON.stringify(sound), 'large.json': JSON.stringify(large) });

let room: Room;
let bench: Page;
beforeAll(async () => {
  const switches = [`--enable-features=StorageQuotaSettings:PoolSizeRatio/${share.toFixed(18)}`];
  room = await openRoom({ packs: false, switches });
  bench = await room.browser.openTab(room.browser.addressOf('workbench.html'));
  await bench.locator('[data-pack-id="trade"]').waitFor();
});
afterAll(() => room?.close());

const choose = (name: string) => bench.locator('[data-part="pack-file"]').setInputFiles(`${files}/${name}`);
const row = () => bench.locator(`[data-pack-id="${ID}"]`);

it('the browser really has so little space', async () => {
  const refusal = await bench.evaluate(
    (size) =>
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
  await row().waitFor();
});

it('an edition that finds none is not, says so, and the one before stays whole', async () => {
  await choose('large.json');
  await bench.locator('[data-part="trouble"]', { hasText: texts.troubles.full }).waitFor();
  expect(await row().textContent()).toContain(`${sound.about.edition}`);
  await bench.reload();
  await row().waitFor();
  expect(await row().textContent()).not.toContain(`${sound.about.edition + 1}`);
  await bench.locator('[data-part="to-enquiry"]').click();
  await bench.locator('#enquiry-serial').fill('KD 439114');
  await bench.keyboard.press('Enter');
  await bench.locator('[data-part="enquiry"][data-verdict="found"]').waitFor();
});

it('none of this made a request or an error', () => {
  expect(ourRequests(room.browser)).toEqual([]);
  expect(ourErrors(room.browser)).toEqual([]);
});
