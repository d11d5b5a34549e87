import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

// Needs a build in .output and a browser: `npm test` sees to both. BEDPLATE_TESTED says which: Chromium or Firefox. One
// worker, one file after another: two browsers at once on a small machine only slow each other down.
/** Crash a process, weigh a heap: what is done with Chromium's own driver. */
const CHROMIUM_ALONE = [
  'killed.long',
  'killed-editing.long',
  'killed-merging.long',
  'killed-taking.long',
  'large-pack.long',
  'torn-write.long',
].map((name) => `tests/browser/${name}.test.ts`);

/**
 * What these try is our own code above the browser, and the same in both: Chromium's turn holds it, Firefox's in the
 * long run, so that the usual one stays under a quarter of an hour.
 */
const ONCE_IN_THE_USUAL_RUN = [
  'answers',
  'beside',
  'drafts',
  'enquiry',
  'enquiry-kind',
  'forged',
  'keeper',
  'own-corrections',
  'packs',
  'photos',
  'price-bad-input',
  'price-rates',
  'prices',
  'reading-pick',
  'remembered',
  'rooms',
  'sheets',
  'storage-full-desk',
  'two-correctors',
  'two-pens',
].map((name) => `tests/browser/${name}.test.ts`);

/**
 * Stood still in Firefox in one run of six, for all of its tests from one on, and why is not known; alone it passed each
 * time. Until that is found, Chromium's turn holds it in the usual run, and both in the long one.
 */
const STOOD_STILL_ONCE = ['tests/browser/following.test.ts'];

const inFirefox = process.env.BEDPLATE_TESTED === 'firefox';

export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: {
    include: ['tests/browser/**/*.test.ts'],
    exclude: [
      ...(process.env.BEDPLATE_LONG ? [] : ['**/*.long.test.ts']),
      ...(inFirefox ? CHROMIUM_ALONE : []),
      ...(inFirefox && process.env.BEDPLATE_USUAL ? [...ONCE_IN_THE_USUAL_RUN, ...STOOD_STILL_ONCE] : []),
    ],
    environment: 'node',
    testTimeout: 60_000,
    hookTimeout: 90_000,
    fileParallelism: false,
    maxWorkers: 1,
    // What all of them use, the browsers' drivers above all, is loaded once.
    isolate: false,
  },
});
