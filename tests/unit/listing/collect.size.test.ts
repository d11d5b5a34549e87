import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { build } from 'vite';
import { expect, it } from 'vitest';

/** Bytes. The reader is injected into pages: what is judged outside costs the page nothing. */
const MOST = 11_100;

it('the part that runs inside the page stays small', async () => {
  const entry = fileURLToPath(new URL('../../../src/listing/collect.ts', import.meta.url));
  const built = await build({
    configFile: false,
    logLevel: 'silent',
    // As a script and not as a module: of modules the bundler leaves the white space.
    build: { write: false, minify: true, target: 'es2022', lib: { entry, formats: ['iife'], name: 'collect' } },
  });
  const [output] = Array.isArray(built) ? built : [built];
  if (!output || !('output' in output)) throw new Error('nothing was built');
  const code = output.output.map((chunk) => ('code' in chunk ? chunk.code : '')).join('');
  expect(code).toContain('ld\\+json');
  expect(gzipSync(code, { level: 9 }).length).toBeLessThan(MOST);
});
