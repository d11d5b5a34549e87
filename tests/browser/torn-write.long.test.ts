import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { installed } from './support/keeper-bench';
import { keptRecords } from './support/kept-records';
import { type Mortal, mortalBrowser } from './support/mortal-browser';

// A browser that was killed in the middle of a write. Chromium leaves the half of it out and writes on behind it; when it
// reads that again it takes the whole for broken, and begins its storage anew, with nothing in it.

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

const packsOf = async (bench: Page) => Object.keys((await keptRecords(bench)).packs ?? {});
