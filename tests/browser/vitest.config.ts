import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

// Needs a build in .output/chrome-mv3 and a browser: `npm test` sees to both. One worker, one file after another: two
// browsers at once on a small machine only slow each other down.
export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: {
    include: ['tests/browser/**/*.test.ts'],
    exclude: process.env.BEDPLATE_LONG ? [] : ['**/*.long.test.ts'],
    environment: 'node',
    testTimeout: 60_000,
    hookTimeout: 90_000,
    fileParallelism: false,
    maxWorkers: 1,
  },
});
