import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

// Needs a build in .output and a browser: `npm test` sees to both. BEDPLATE_TESTED says which: Chromium, or Firefox for
// the tests that drive either. One worker, one file after another: two
// browsers at once on a small machine only slow each other down.
const IN_BOTH = [
  'keyboard',
  'packs',
  'drafts',
  'enquiry',
  'enquiry-kind',
  'storage-full',
  'spine',
  'states',
  'screens',
  'answers',
  'forged',
  'hostile',
  'segmentation',
  'faults',
].map((name) => `tests/browser/${name}.test.ts`);

export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: {
    include: process.env.BEDPLATE_TESTED === 'firefox' ? IN_BOTH : ['tests/browser/**/*.test.ts'],
    exclude: process.env.BEDPLATE_LONG ? [] : ['**/*.long.test.ts'],
    environment: 'node',
    testTimeout: 60_000,
    hookTimeout: 90_000,
    fileParallelism: false,
    maxWorkers: 1,
  },
});
