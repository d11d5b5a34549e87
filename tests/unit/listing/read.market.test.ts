import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { JSDOM } from 'jsdom';
import { describe, expect, it } from 'vitest';
import { readListing } from '../../../src/listing/read';

const market = fileURLToPath(new URL('../../../fixtures/market/', import.meta.url));
const folders = readdirSync(market).filter((name) => existsSync(`${market}${name}/expected.json`));
const bare = (value: unknown) => (typeof value === 'string' ? value.replace(/\s+/g, ' ').trim() : value);

function read(file: string) {
  const page = new JSDOM(readFileSync(`${market}${file}`), { url: `https://market.example/${file}` });
  return readListing(page.window.document);
}

interface Expected {
  kind: string;
  listing?: Record<string, unknown> & {
    price?: { amount: string; currency: string; how: string } | null;
    photosCount?: number;
  };
}

describe.each(folders)('the market page %s', (folder) => {
  const expected: Expected = JSON.parse(readFileSync(`${market}${folder}/expected.json`, 'utf8'));
  // Where a script of the page puts the content in, its settled form stands beside it.
  const settled = existsSync(`${market}${folder}/settled.html`);
  const listing = read(`${folder}/${settled ? 'settled' : 'page'}.html`);
  const { price, photosCount, ...texts } = expected.listing ?? {};

  it('is read as a person reads it', () => {
    for (const [field, value] of Object.entries(texts)) {
      expect([field, bare(listing[field as keyof typeof listing])]).toEqual([field, bare(value)]);
    }
    if (price !== undefined) {
      const read = listing.price && { ...listing.price, amount: Number(listing.price.amount) };
      expect(read).toEqual(price && { ...price, amount: Number(price.amount) });
    }
    if (photosCount !== undefined) expect(listing.photos).toHaveLength(photosCount);
  });

  it('is told from a list of adverts', () => {
    if (expected.kind === 'list') expect(listing.offers).toBeGreaterThan(1);
    else expect(listing.offers).toBe(1);
  });
});

describe('pages of the market without an advert of their own', () => {
  it('the front page is not taken for an advert', () => {
    expect(read('index.html')).toMatchObject({ offers: 0, title: '', description: '', price: null });
  });
});

describe('pages that a script fills in, without the script', () => {
  it.each(['spa-two-adverts', 'spa-fildercott-senior'])('%s is read from the data in that script', (folder) => {
    const { listing }: Expected = JSON.parse(readFileSync(`${market}${folder}/expected.json`, 'utf8'));
    const { title, description, condition, place, price, fields } = read(`${folder}/page.html`);
    expect({ title, description: bare(description), condition, place }).toEqual({
      title: listing?.title,
      description: bare(listing?.description),
      condition: listing?.condition,
      place: listing?.place,
    });
    expect(Number(price?.amount)).toBe(Number(listing?.price?.amount));
    expect(fields.price?.source).toBe('state');
  });
});
