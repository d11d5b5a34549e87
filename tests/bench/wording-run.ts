import { spawnSync } from 'node:child_process';
import { build } from 'vite';
import { ROOT } from '../steps/root';

// `npm run bench:wording`: bundles the measurement as the extension is bundled, and runs it in Node. From the sources, each
// call from one file into another takes a way round that no browser takes, while the two libraries come as they are.

const FOLDER = `${ROOT}/.test/bench`;

await build({
  configFile: false,
  root: ROOT,
  logLevel: 'error',
  build: {
    ssr: `${ROOT}/tests/bench/wording.ts`,
    outDir: FOLDER,
    minify: true,
    rollupOptions: { output: { entryFileNames: 'wording.mjs' } },
  },
  ssr: { noExternal: true },
});
process.exitCode = spawnSync(process.execPath, [`${FOLDER}/wording.mjs`], { stdio: 'inherit' }).status ?? 1;
