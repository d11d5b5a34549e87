import { cpus, loadavg } from 'node:os';
import { gzipSync } from 'node:zlib';
import { findOrInstallBrowser } from '../../../src/cli/demo/install-browser';
import { printHostLoad } from './host-load';
import { type Measured, measureInChromium } from './in-chromium';
import { largePack } from './large-pack';

// `npm run bench:packs`: how soon a large pack answers in a real Chromium. From the browser's storage to the first run of
// a number with its source and the first phrases of an advert, beside getting the same pack's text from the same storage
// and parsing it as JSON, which is the least that a program without a compiled form would have to do. Then the size, and
// one number looked up beside a general interval tree (tests/bench/serials.ts). Figures are of this machine, today; where
// others work on it too, parsing suffers more than we do, and the quickest rounds say more than the middle ones. Last, what
// those who follow a pack ask of its host (host-load.ts), which is simulated.

const ROUNDS = 15;
const MODELS = 5_000;

const browser = findOrInstallBrowser(console.log);
if (!browser) throw new Error('there is no Chromium to measure in');

const median = (all: number[]) => [...all].sort((a, b) => a - b)[all.length >> 1]!;
const ms = (value: number) => `${value.toFixed(1).padStart(9)} ms`;
const mb = (bytes: number) => `${(bytes / 1e6).toFixed(2).padStart(9)} MB`;

const load = () => loadavg()[0]!.toFixed(1);
console.log(
  `Chromium, ${cpus()[0]?.model.trim()}, ${cpus().length} cores; medians of ${ROUNDS} rounds in turns, load ${load()}`,
);
for (const runs of [100_000, 1_000_000]) {
  const pack = largePack(MODELS, runs);
  const middle = runs >> 1;
  const scheme = pack.serials!.schemes.find(({ id }) => id === pack.serials!.runs.scheme[middle])!;
  const serial = `${scheme.prefix}${pack.serials!.runs.first[middle]}`;
  const zipped = gzipSync(JSON.stringify(pack)).length;
  const measured = await measureInChromium(browser, [MODELS, runs, serial], ROUNDS);
  print(runs, measured, zipped);
}

function print(runs: number, { sizes, rounds }: Measured, zipped: number): void {
  const of = (value: (round: Measured['rounds'][number]) => number) => median(rounds.map(value));
  const least = (value: (round: Measured['rounds'][number]) => number) => Math.min(...rounds.map(value));
  const [leastText, leastBytes] = [least((round) => round.text.all), least((round) => round.bytes.all)];
  const [text, bytes] = [of((round) => round.text.all), of((round) => round.bytes.all)];
  console.log(`\n${MODELS.toLocaleString('en')} models, ${runs.toLocaleString('en')} runs`);
  console.log(
    `  text got and parsed as JSON          ${ms(text)}   (${ms(of((round) => round.text.get)).trim()} to get it)`,
  );
  const parts = `(${ms(of((round) => round.bytes.get)).trim()} to get, ${ms(of((round) => round.bytes.open)).trim()} to check and open)`;
  console.log(`  compiled, to the first answers       ${ms(bytes)}   ${parts}`);
  console.log(`  compiled / text                      ${(bytes / text).toFixed(3).padStart(9)}      (goal: 0.1)`);
  console.log(
    `  of the quickest rounds               ${(leastBytes / leastText).toFixed(3).padStart(9)}      (${ms(leastBytes).trim()} / ${ms(leastText).trim()}, load now ${load()})`,
  );
  console.log(`  to read, check and compile the text  ${ms(sizes.make)}   (once, at installation)`);
  console.log(`  text                                 ${mb(sizes.text)}`);
  console.log(`  text, gzip                           ${mb(zipped)}`);
  console.log(
    `  compiled                             ${mb(sizes.compiled)}   (${(sizes.compiled / zipped).toFixed(2)} of the gzip)`,
  );
}

console.log('\nOne number, beside a general interval tree');
await import('../serials');

await printHostLoad();
