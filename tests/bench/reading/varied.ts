import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { JSDOM, VirtualConsole } from 'jsdom';
import { readListing } from '../../../src/listing/read';
import { ROOT } from '../../steps/root';
import { FIELDS, type Field, isSurelyWrong, judged } from './judge';
import { type ExpectedListing, pagesIn, type StoredPage } from './stored-pages';
import { VARIATIONS, type Variation } from './variations';

// `npm run bench:varied [-- FOLDER ...] [--misses]`: pages with their mark-up changed in ways that a person would not see.
// Counted is what is read right of what is still to be read on the page; a field that falls by much was read from one
// place alone. In jsdom, without layout. Never of the measured half: the misses would tell of it.

const misses = process.argv.includes('--misses');
const only = process.argv.find((argument) => argument.startsWith('--only='))?.slice(7);
const given = process.argv.slice(2).filter((argument) => !argument.startsWith('-'));
const folders = (given.length > 0 ? given : ['fixtures/pages/tuned', 'fixtures/market'].map((path) => join(ROOT, path)))
  .filter((path) => existsSync(path))
  .filter((path) => !path.includes('measured'));

const bare = (text: string): string =>
  (
    text
      .normalize('NFKD')
      .replace(/\p{M}/gu, '')
      .toLowerCase()
      .match(/[\p{L}\p{N}]+/gu) ?? []
  ).join('');

/** Without the fields that the visible text no longer tells. */
function stillTold(expected: ExpectedListing, document: Document): ExpectedListing {
  const clone = document.body?.cloneNode(true) as HTMLElement | undefined;
  for (const silent of clone?.querySelectorAll('script, style, template, noscript') ?? []) silent.remove();
  const raw = clone?.textContent ?? '';
  // Without white space: elements side by side have none between them.
  const seen = bare(raw);
  const digits = raw.replace(/[^\d]/g, '');
  const told: ExpectedListing = { ...expected };
  for (const field of ['title', 'condition', 'place'] as const)
    if (told[field] && !seen.includes(bare(told[field]))) delete told[field];
  if (told.description && !seen.includes(bare(told.description).slice(0, 60))) delete told.description;
  if (told.price && !digits.includes(told.price.amount.replace(/\.00$/, '').replace('.', ''))) delete told.price;
  return told;
}

/** What became of one variation on all pages. */
interface Tally {
  variation: Variation;
  counts: Map<Field, [hits: number, known: number]>;
  sure: number;
  lost: string[];
}

/** Reads one page as the variation leaves it. `before`: what is read right of the page as it is. */
function read(page: StoredPage, tally: Tally, before: Partial<Record<Field, boolean>> | null): typeof before {
  const { window } = new JSDOM(page.html, { url: page.address, virtualConsole: new VirtualConsole() });
  const { document } = window;
  tally.variation.change(document);
  const expected = before ? stillTold(page.expected!, document) : page.expected!;
  const listing = readListing(document, page.address);
  window.close();
  const verdict = judged(listing, expected);
  if (isSurelyWrong(listing, expected)) {
    tally.sure++;
    tally.lost.push(`    ${page.name}: SURELY WRONG`);
  }
  for (const [field, right] of Object.entries(verdict) as [Field, boolean][]) {
    const count = tally.counts.get(field) ?? [0, 0];
    tally.counts.set(field, [count[0] + (right ? 1 : 0), count[1] + 1]);
    if (right || before?.[field] === false) continue;
    const key = field === 'photos' ? 'photosCount' : (field as 'title');
    const said = field === 'photos' ? listing.photos.length : listing[field as 'title'];
    tally.lost.push(
      `    ${page.name}: ${field}: read ${JSON.stringify(said)}, expected ${JSON.stringify(expected[key])}`,
    );
  }
  return verdict;
}

function print({ variation, counts, sure, lost }: Tally): void {
  const line = FIELDS.map((field) => {
    const [hits, known] = counts.get(field) ?? [0, 0];
    return `${field} ${hits}/${known}`;
  });
  console.log(`${variation.name.padEnd(42)} ${line.join('  ')}  surely wrong ${sure}`);
  if (misses) for (const one of lost) console.log(one);
}

const tallies = VARIATIONS.filter(({ name }, index) => index === 0 || !only || name.includes(only)).map(
  (variation): Tally => ({ variation, counts: new Map(), sure: 0, lost: [] }),
);
for (const page of folders.flatMap((folder) => pagesIn(folder))) {
  if (!page.expected) continue;
  let before: ReturnType<typeof read> = null;
  for (const tally of tallies) {
    const verdict = read(page, tally, before);
    before ??= verdict;
    // Weak references hold what they were asked for until a turn of the event loop ends: without one no page is let go.
    await new Promise((resolve) => setImmediate(resolve));
  }
}
for (const tally of tallies) print(tally);
