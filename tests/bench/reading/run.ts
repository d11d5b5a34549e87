import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { findOrInstallBrowser } from '../../../src/cli/demo/install-browser';
import { wilson } from '../../corpus/wilson';
import { ROOT } from '../../steps/root';
import { ratiosBySize } from './by-size';
import { grownPages } from './grown-pages';
import { measureInChromium, profileInChromium } from './in-chromium';
import { measureInNode } from './in-node';
import type { Measured } from './in-page';
import { FIELDS, isSurelyWrong, judged } from './judge';
import { largePages } from './large-pages';
import type { Profile } from './profile';
import { pagesIn, type StoredPage } from './stored-pages';

// `npm run bench:reading [-- FOLDER | NODES | grown ...] [--misses] [--profile]`: how well and how fast pages are read, in
// Node and in a real Chromium, beside a general article reader on the same documents in the same run. Without a folder:
// the tuned and the measured half of fixtures/pages, the market, both of these grown to the size of real pages (in
// Chromium alone), and large pages of the given numbers of nodes. With
// --misses what was read wrongly, but never of the measured half: who sees its misses begins to tune on them. With
// --profile where the time goes, function by function, in Chromium. Times are of this machine, today.
//
// Both halves of reading count: what runs in the page keeps the page waiting, what runs outside of it keeps the user
// waiting, and readability does both in one.

const misses = process.argv.includes('--misses');
const isProfile = process.argv.includes('--profile');
const given = process.argv.slice(2).filter((argument) => !argument.startsWith('-'));
const MEASURED = join(ROOT, 'fixtures/pages/measured');
const ALL = ['fixtures/pages/tuned', 'fixtures/pages/measured', 'fixtures/market', 'grown', '4000', '20000', '100000'];
/** What is grown: the pages that nobody tunes on, and those of the market. */
const GROWN = ['fixtures/pages/measured', 'fixtures/market'];
/** jsdom takes a minute for a page of more nodes. */
const NODE_MOST = 20_000;
const FUNCTIONS_TOLD = 45;

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
  line('ours: both, ms', (one) => one.collect + one.settle);
  line('readability, ms', ({ readability }) => readability);
  line('ours / readability', (one) => (one.collect + one.settle) / one.readability);
  line('the quickest round: ours, ms', ({ quickest }) => quickest.ours);
  line('the quickest round: readability', ({ quickest }) => quickest.readability);
  line('the quickest: ours / readability', ({ quickest }) => quickest.ours / quickest.readability);
  line('the first time: ours, ms', ({ first }) => first.ours);
  line('the first time: readability, ms', ({ first }) => first.readability);
  line('the first time: ours / readability', ({ first }) => first.ours / first.readability);
  line('longest slice in the page, ms', ({ slices }) => slices.longest);
  line('slices', ({ slices }) => slices.count, 0);
  for (const one of ratiosBySize(read)) console.log(one);
}

function printProfile(profiles: readonly (Profile & { readings: number })[]): void {
  const together = (of: (one: Profile) => [string, number][]): [string, number][] => {
    const all = new Map<string, number>();
    for (const one of profiles)
      for (const [name, share] of of(one)) all.set(name, (all.get(name) ?? 0) + share / profiles.length);
    return [...all].sort((a, b) => b[1] - a[1]);
  };
  for (const [part, share] of together(({ parts }) => parts)) console.log(`  ${percent(share).padStart(5)} %  ${part}`);
  console.log('  by function, without what it calls');
  for (const [name, share] of together(({ functions }) => functions).slice(0, FUNCTIONS_TOLD))
    console.log(`  ${percent(share).padStart(5)} %  ${name}`);
  console.log('  by function, with what it calls');
  for (const [name, share] of together(({ wholes }) => wholes).slice(0, FUNCTIONS_TOLD))
    console.log(`  ${percent(share).padStart(5)} %  ${name}`);
}

async function oneByOne(pages: readonly StoredPage[]): Promise<Measured[]> {
  const read: Measured[] = [];
  for (const page of pages) read.push(await measureInNode(page));
  return read;
}

/** A folder's pages, stored pages that were grown, or pages made as large as told. */
function pagesOf(told: string): StoredPage[] {
  if (isSize(told)) return largePages(Number(told));
  if (told === 'grown') return GROWN.flatMap((folder) => grownPages(pagesIn(join(ROOT, folder))));
  const path = resolve(ROOT, told);
  return existsSync(path) ? pagesIn(path) : [];
}

const isSize = (told: string): boolean => /^\d+$/.test(told);
/** jsdom would take minutes for what has no layout anyway. */
const isForNode = (told: string): boolean => told !== 'grown' && !(Number(told) > NODE_MOST);

const browser = findOrInstallBrowser(console.log);
const inChromium: Measured[] = [];
for (const told of given.length > 0 ? given : ALL) {
  const pages = pagesOf(told);
  if (pages.length === 0) continue;
  const mayTell = misses && told !== 'grown' && resolve(ROOT, told) !== MEASURED;
  const judgedPages = pages.filter(({ expected }) => expected).length;
  const name = isSize(told) ? `made, of about ${told} nodes` : told;
  console.log(`\n${name}: ${pages.length} pages, ${judgedPages} with an expected result`);
  if (isProfile) {
    if (browser) printProfile(await profileInChromium(pages, browser));
    continue;
  }
  const report = (way: string, read: readonly Measured[]) => {
    console.log(` ${way}`);
    printAccuracy(pages, read, mayTell);
    printTimes(read);
  };
  if (isForNode(told)) report(`Node ${process.version}, jsdom`, await oneByOne(pages));
  if (!browser) continue;
  const read = await measureInChromium(pages, browser);
  report('Chromium', read);
  inChromium.push(...read);
}
if (inChromium.length > 0) {
  console.log('\nall of these in Chromium');
  for (const line of ratiosBySize(inChromium)) console.log(line);
}
