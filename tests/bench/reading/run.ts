import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { findOrInstallBrowser } from '../../../src/cli/demo/install-browser';
import { wilson } from '../../corpus/wilson';
import { ROOT } from '../../steps/root';
import { measureInChromium } from './in-chromium';
import { measureInNode } from './in-node';
import type { Measured } from './in-page';
import { FIELDS, isSurelyWrong, judged } from './judge';
import { pagesIn, type StoredPage } from './stored-pages';

// `npm run bench:reading [-- FOLDER ...] [--misses]`: how well and how fast pages are read, in Node and in a real
// Chromium, beside a general article reader on the same documents in the same run. Without a folder: the tuned and the
// measured half of fixtures/pages and the market. With --misses what was read wrongly, but never of the measured half:
// who sees its misses begins to tune on them. Times are of this machine, today.

const misses = process.argv.includes('--misses');
const given = process.argv.slice(2).filter((argument) => !argument.startsWith('-'));
const MEASURED = join(ROOT, 'fixtures/pages/measured');
const folders = (
  given.length > 0
    ? given
    : ['fixtures/pages/tuned', 'fixtures/pages/measured', 'fixtures/market'].map((path) => join(ROOT, path))
).filter((path) => existsSync(path));

const at = (all: number[], share: number): number =>
  [...all].sort((a, b) => a - b)[Math.min(all.length - 1, Math.floor(all.length * share))] ?? Number.NaN;
const percent = (share: number): string => (Number.isNaN(share) ? '-' : (share * 100).toFixed(1));

function printAccuracy(pages: readonly StoredPage[], read: readonly Measured[], mayTell: boolean): void {
  const verdicts = pages.map(({ expected }, index) => (expected ? judged(read[index]!.listing, expected) : {}));
  for (const field of FIELDS) {
    const known = verdicts.filter((verdict) => verdict[field] !== undefined);
    if (known.length === 0) continue;
    const hits = known.filter((verdict) => verdict[field]).length;
    const { share, low, high } = wilson(hits, known.length);
    console.log(
      `  ${field.padEnd(12)} ${`${hits}/${known.length}`.padStart(9)}  ${percent(share).padStart(5)} %  (95 % interval ${percent(low)} to ${percent(high)})`,
    );
  }
  const sure = pages.filter(({ expected }, index) => expected && isSurelyWrong(read[index]!.listing, expected));
  console.log(`  wrong prices stated with high confidence: ${sure.length}`);
  if (!mayTell) return;
  for (const [index, { name, expected }] of pages.entries()) {
    const { listing } = read[index]!;
    for (const [field, right] of Object.entries(verdicts[index]!)) {
      if (right) continue;
      const key = field === 'photos' ? 'photosCount' : (field as 'title');
      const said = field === 'photos' ? listing.photos.length : listing[field as 'title'];
      console.log(`  ${name}: ${field}: read ${JSON.stringify(said)}, expected ${JSON.stringify(expected?.[key])}`);
    }
  }
}

function printTimes(read: readonly Measured[]): void {
  const line = (what: string, of: (one: Measured) => number, digits = 2) => {
    const all = read.map(of);
    console.log(
      `  ${what.padEnd(34)} median ${at(all, 0.5).toFixed(digits).padStart(9)}, 90 % ${at(all, 0.9).toFixed(digits).padStart(9)}`,
    );
  };
  line('nodes', ({ nodes }) => nodes, 0);
  line('one walk over all nodes, ms', ({ walk }) => walk);
  line('ours: in the page (collect), ms', ({ collect }) => collect);
  line('ours: outside of it (settle), ms', ({ settle }) => settle);
  line('readability, ms', ({ readability }) => readability);
  line('ours / readability', (one) => (one.collect + one.settle) / one.readability);
}

const browser = findOrInstallBrowser(console.log);
for (const folder of folders) {
  const pages = pagesIn(folder);
  if (pages.length === 0) continue;
  const mayTell = misses && join(folder) !== MEASURED;
  const judgedPages = pages.filter(({ expected }) => expected).length;
  console.log(`\n${folder.replace(`${ROOT}/`, '')}: ${pages.length} pages, ${judgedPages} with an expected result`);
  const ways: [string, () => Promise<Measured[]>][] = [
    [`Node ${process.version}, jsdom`, async () => pages.map(measureInNode)],
  ];
  if (browser) ways.push(['Chromium', () => measureInChromium(pages, browser)]);
  for (const [way, measure] of ways) {
    console.log(` ${way}`);
    const read = await measure();
    printAccuracy(pages, read, mayTell);
    printTimes(read);
  }
}
