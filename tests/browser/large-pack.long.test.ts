import { rmSync, statSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { workbenchTexts as texts } from '../../src/text/catalogue/workbench';
import { folderOf, ourRequests, seenErrors, until } from './hands';
import { openRoom, type Room } from './support/browser';

const RUNS = 1_050_000;
const numbers = (from: number) => Array.from({ length: RUNS }, (_, i) => String(from + i * 10).padStart(8, '0'));
const large = JSON.stringify({
  schema: 1,
  about: {
    ...{ id: 'large-table', title: 'A large table', edition: 1, licence: 'CC0-1.0', language: 'en', demo: true },
    covers: { thing: 'sewing machine', words: ['sewing machine'] },
  },
  models: [{ id: 'plain', label: 'Plain one', names: ['Plain Onemodel'] }],
  serials: {
    schemes: [{ id: 'n', prefix: 'N', digits: 8 }],
    runs: {
      scheme: Array(RUNS).fill('n'),
      first: numbers(1),
      last: numbers(10),
      models: Array(RUNS).fill(['plain']),
      year: Array.from({ length: RUNS }, (_, i) => 1880 + Math.floor((i / RUNS) * 80)),
      place: Array(RUNS).fill('Works'),
    },
  },
});
const files = folderOf({
  'large.json': large,
  'broken.json': `${large.slice(0, -3)}`,
  'beyond.json': `{"schema":1${' '.repeat(100_000_000)}}`,
});

let room: Room;
let bench: Page;
beforeAll(async () => {
  room = await openRoom({ packs: false });
  bench = await room.browser.openTab(room.browser.addressOf('workbench.html'));
  await bench.locator('[data-pack-id="trade"]').waitFor();
});
afterAll(async () => {
  await room?.close();
  rmSync(files, { recursive: true });
});

const choose = (name: string) => bench.locator('[data-part="pack-file"]').setInputFiles(`${files}/${name}`);
const progress = (state: string) => bench.locator(`[data-part="install-progress"][data-state="${state}"]`);
const row = () => bench.locator('[data-pack-id="large-table"]');

it('has about 50 MB', () => {
  expect(statSync(`${files}/large.json`).size / 1e6).toBeGreaterThan(50);
});

it('refuses a file beyond the limit before it reads it', async () => {
  await choose('beyond.json');
  await bench.locator('[data-part="refused-file"]', { hasText: 'beyond.json' }).waitFor();
  expect(await bench.locator('[data-part="issue"]').textContent()).toContain('100 MB');
});

it('can be stopped while a large pack is checked, and nothing of it remains', async () => {
  await choose('large.json');
  await progress('checking').waitFor();
  await bench.locator('[data-part="cancel-install"]').click();
  await bench.locator('[data-part="install-outcome"]', { hasText: texts.install.cancelled }).waitFor();
  await bench.reload();
  await bench.locator('[data-pack-id="trade"]').waitFor();
  expect(await row().count()).toBe(0);
});

it('says where a large broken file ends', async () => {
  await choose('broken.json');
  await bench.locator('[data-part="refused-file"]', { hasText: 'broken.json' }).waitFor({ timeout: 120_000 });
  expect(await row().count()).toBe(0);
}, 150_000);

it('installs it, answering to a finger all the while', async () => {
  await choose('large.json');
  await progress('checking').waitFor();
  // While the other thread is at work, this one draws rooms and takes clicks.
  await bench.locator('[data-part="to-drafts"]').click();
  await bench.locator('[data-part="new-draft"]').waitFor({ timeout: 2_000 });
  await bench.locator('[data-part="to-packs"]').click();
  expect(await bench.locator('[data-part="install-outcome"] p').count()).toBe(0);
  await row().waitFor({ timeout: 200_000 });
  expect(await row().textContent()).toContain(String(RUNS));
}, 240_000);

it('finds a number in it', async () => {
  await bench.locator('[data-part="to-enquiry"]').click();
  await bench.locator('#enquiry-serial').fill('N00000105');
  await bench.keyboard.press('Enter');
  await bench.locator('[data-part="enquiry"][data-verdict="found"]').waitFor({ timeout: 120_000 });
}, 150_000);

it('keeps none of it in the page’s own thread', async () => {
  const session = await bench.context().newCDPSession(bench);
  await session.send('HeapProfiler.enable');
  await session.send('HeapProfiler.collectGarbage');
  await until('the heap is small', async () => {
    const { usedSize } = (await session.send('Runtime.getHeapUsage')) as { usedSize: number };
    return usedSize < 20_000_000;
  });
  expect(ourRequests(room.browser)).toEqual([]);
  expect(await seenErrors(room.browser)).toEqual([]);
});
