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

const pages: StoredPage[] = folders.flatMap((folder) => pagesIn(folder)).filter(({ expected }) => expected);
const before = new Map<string, Partial<Record<Field, boolean>>>();

function read({ name, change }: Variation): void {
  const counts = new Map<Field, [hits: number, known: number]>();
  let sure = 0;
  const lost: string[] = [];
  for (const page of pages) {
    const { window } = new JSDOM(page.html, { url: page.address, virtualConsole: new VirtualConsole() });
    const { document } = window;
    change(document);
    const expected = name === VARIATIONS[0]!.name ? page.expected! : stillTold(page.expected!, document);
    const listing = readListing(document, page.address);
    window.close();
    const verdict = judged(listing, expected);
    if (name === VARIATIONS[0]!.name) before.set(page.name, verdict);
    if (isSurelyWrong(listing, expected)) {
      sure++;
      lost.push(`    ${page.name}: SURELY WRONG`);
    }
    for (const [field, right] of Object.entries(verdict) as [Field, boolean][]) {
      const count = counts.get(field) ?? [0, 0];
      counts.set(field, [count[0] + (right ? 1 : 0), count[1] + 1]);
      if (right || (name !== VARIATIONS[0]!.name && before.get(page.name)?.[field] === false)) continue;
      const key = field === 'photos' ? 'photosCount' : (field as 'title');
      const said = field === 'photos' ? listing.photos.length : listing[field as 'title'];
      lost.push(`    ${page.name}: ${field}: read ${JSON.stringify(said)}, expected ${JSON.stringify(expected[key])}`);
    }
  }
  const line = FIELDS.map((field) => {
    const [hits, known] = counts.get(field) ?? [0, 0];
    return `${field} ${hits}/${known}`;
  });
  console.log(`${name.padEnd(42)} ${line.join('  ')}  surely wrong ${sure}`);
  if (misses) for (const one of lost) console.log(one);
}

for (const variation of VARIATIONS)
  if (!only || variation.name === VARIATIONS[0]!.name || variation.name.includes(only)) read(variation);
