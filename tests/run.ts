import { join } from 'node:path';
import { BROWSER_VARIABLE } from '../src/cli/demo/find-browser';
import { FIREFOX_VARIABLE } from '../src/cli/demo/find-firefox';
import { findOrInstallBrowser, findOrInstallFirefox } from '../src/cli/demo/install-browser';
import { checkAddOn } from './steps/add-on';
import { checkBudgets } from './steps/budgets';
import { ROOT } from './steps/root';
import { exitCode, failedOne, lastLine, skippedOne, sum, type Tally } from './steps/tally';
import { check, vitest } from './steps/tools';

// `npm test`: everything that a change is held to, in the order in which a failure is cheapest to find. With --long,
// tests named *.long.test.ts run as well. All steps run, whatever failed before; the last line counts them.

const long = process.argv.includes('--long');
const ci = /^(?:1|true)$/i.test(process.env.CI ?? '');
const CHROMIUM_BUILD = join(ROOT, '.output/chrome-mv3');
const FIREFOX_BUILD = join(ROOT, '.output/firefox-mv3');

let built = false;
const notBuilt = () => failedOne('failed: not run, because the build failed');

const steps: [string, () => Tally][] = [
  ['types', () => check('types', ['wxt', ['prepare']], ['tsc', ['--noEmit']])],
  ['lint', () => check('lint', ['biome', ['check', '--config-path=.config', '--error-on-warnings', '.']])],
  ['unit, laws, outside, corpus', () => vitest('tests/vitest.config.ts', long)],
  [
    'build',
    () => {
      const tally = sum([
        check('build for Chromium', ['wxt', ['build', '-b', 'chrome']]),
        check('build for Firefox', ['wxt', ['build', '-b', 'firefox', '--mv3']]),
      ]);
      built = tally.failed === 0;
      return tally;
    },
  ],
  ['byte budgets', () => (built ? sum([CHROMIUM_BUILD, FIREFOX_BUILD].map((each) => checkBudgets(each))) : notBuilt())],
  ['add-on linter', () => (built ? checkAddOn(FIREFOX_BUILD) : notBuilt())],
  ['browser: Chromium', () => (built ? inBrowser('chromium', BROWSER_VARIABLE, findOrInstallBrowser) : notBuilt())],
  ['browser: Firefox', () => (built ? inBrowser('firefox', FIREFOX_VARIABLE, findOrInstallFirefox) : notBuilt())],
];

function inBrowser(name: string, variable: string, find: typeof findOrInstallBrowser): Tally {
  const browser = find(console.log);
  if (!browser) return skippedOne(`tests in a real ${name}: there is none`);
  process.env[variable] = browser;
  process.env.BEDPLATE_TESTED = name;
  if (!long) process.env.BEDPLATE_USUAL = '1';
  console.log(browser);
  return vitest('tests/browser/vitest.config.ts', long, name);
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
