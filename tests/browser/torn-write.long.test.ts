import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { installed } from './support/keeper-bench';
import { keptRecords } from './support/kept-records';
import { type Mortal, mortalBrowser } from './support/mortal-browser';

// A browser that was killed in the middle of a write. Chromium leaves the half of it out and writes on behind it; when it
// reads that again it takes the whole for broken, and begins its storage anew, with nothing in it.

/** As the extension's own pages have it. */
declare const chrome: typeof import('wxt/browser').browser;

let mortal: Mortal;
beforeAll(() => {
  mortal = mortalBrowser();
});
afterAll(() => mortal?.close());

it('what was there after a write that was torn, and what is kept from then on, is there the next time as well', async () => {
  const first = await mortal.bench();
  await installed(first, 'before', 5_000);
  await installed(first, 'torn', 5_000);
  await mortal.kill();
  mortal.tear(100);
  const bench = await mortal.bench();
  const there = await packsOf(bench);
  expect(there).toContain('before');
  await installed(bench, 'after', 5);
  await mortal.kill();
  expect(await packsOf(await mortal.bench())).toEqual(['after', ...there]);
}, 120_000);

it('where all that was kept is gone all the same, the workbench says so until that has been read', async () => {
  const first = await mortal.bench();
  await expect.poll(() => seenOf(first)).toMatchObject({ lost: null });
  await first.reload();
  await installed(first, 'gone', 5);
  expect(await first.locator(NOTE).count()).toBe(0);
  await mortal.kill();
  mortal.damage();
  const bench = await mortal.bench();
  await bench.locator(NOTE).waitFor();
  expect(await packsOf(bench)).toEqual([]);
  await bench.locator('[data-part="begun-anew-read"]').click();
  await bench.locator(NOTE).waitFor({ state: 'detached' });
  await expect.poll(() => seenOf(bench)).toMatchObject({ lost: null });
  await bench.reload();
  await installed(bench, 'new', 5);
  expect(await bench.locator(NOTE).count()).toBe(0);
}, 120_000);

const NOTE = '[data-part="begun-anew"]';
const seenOf = (bench: Page) =>
  bench.evaluate(async () => (await chrome.storage.local.get('storage-seen'))['storage-seen']);
const packsOf = async (bench: Page) => Object.keys((await keptRecords(bench)).packs ?? {});
