import { join } from 'node:path';
import { BROWSER_VARIABLE } from '../src/cli/demo/find-browser';
import { findOrInstallBrowser } from '../src/cli/demo/install-browser';
import { checkBudgets } from './steps/budgets';
import { ROOT } from './steps/root';
import { exitCode, failedOne, lastLine, skippedOne, sum, type Tally } from './steps/tally';
import { check, vitest } from './steps/tools';

// `npm test`: everything that a change is held to, in the order in which a failure is cheapest to find. With --long,
// tests named *.long.test.ts run as well. All steps run, whatever failed before; the last line counts them.

const long = process.argv.includes('--long');
const ci = /^(?:1|true)$/i.test(process.env.CI ?? '');
const CHROME_BUILD = join(ROOT, '.output/chrome-mv3');

let built = false;
const notBuilt = () => failedOne('failed: not run, because the build failed');

const steps: [string, () => Tally][] = [
  ['types', () => check('types', ['wxt', ['prepare']], ['tsc', ['--noEmit']])],
  ['lint', () => check('lint', ['biome', ['check', '--config-path=.config', '--error-on-warnings', '.']])],
  ['unit, laws, outside, corpus', () => vitest('tests/vitest.config.ts', long)],
  [
    'build',
    () => {
      const tally = check('build', ['wxt', ['build', '-b', 'chrome']]);
      built = tally.failed === 0;
      return tally;
    },
  ],
  ['byte budgets', () => (built ? checkBudgets(CHROME_BUILD) : notBuilt())],
  ['browser', () => (built ? inBrowser() : notBuilt())],
];

function inBrowser(): Tally {
  const browser = findOrInstallBrowser(console.log);
  if (!browser) return skippedOne('tests in a real browser: there is none');
  process.env[BROWSER_VARIABLE] = browser;
  console.log(browser);
  return vitest('tests/browser/vitest.config.ts', long);
}

process.chdir(ROOT);
const tallies = steps.map(([name, step]) => {
  console.log(`\n== ${name}`);
  const begun = Date.now();
  const tally = step();
  console.log(`== ${name}: ${lastLine(tally)}, ${((Date.now() - begun) / 1000).toFixed(1)} s`);
  return tally;
});

const all = sum(tallies);
if (all.notes.length > 0) console.log(`\n${all.notes.join('\n')}`);
console.log(`\n${lastLine(all)}`);
process.exitCode = exitCode(all, ci);
