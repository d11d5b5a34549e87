import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

// Real-browser tests have a config of their own (tests/browser/vitest.config.ts): they need a build and a browser.
export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    include: ['tests/{unit,laws,outside,corpus}/**/*.test.{ts,tsx}'],
    // Tests that take their time run with `npm run test:long`.
    exclude: process.env.BEDPLATE_LONG ? [] : ['**/*.long.test.ts'],
    setupFiles: ['tests/seed.ts'],
    environment: 'node',
    testTimeout: 20_000,
    isolate: false,
    pool: 'threads',
  },
});
