import { JSDOM, VirtualConsole } from 'jsdom';
import { describe, expect, it } from 'vitest';
import { readListing } from '../../src/engine';
import type { Listing } from '../../src/listing/types';
import { judged } from '../bench/reading/judge';
import { pagesIn, type StoredPage } from '../bench/reading/stored-pages';
import { ROOT } from '../steps/root';

/**
 * The pages that the reader was worked on with are read rightly, as far as they can be without a layout. Of the pages
 * that it is only measured on no test speaks one by one: `npm run bench:reading` prints their totals.
 */
function read({ html, address }: StoredPage): Listing {
  const { window } = new JSDOM(html, { url: address, virtualConsole: new VirtualConsole() });
  const listing = readListing(window.document, address);
  window.close();
  return listing;
}

describe.each(pagesIn(`${ROOT}/fixtures/pages/tuned`))('the page $name', (page) => {
  const listing = read(page);
  const { expected } = page;

  it('is read as a person reads it', () => {
    expect(expected).not.toBeNull();
    const verdict = judged(listing, expected!);
    const wrong = Object.entries(verdict).filter(([, right]) => !right);
    expect(wrong.map(([field]) => [field, listing[field as 'title'] ?? null])).toEqual([]);
  });
});

describe('pages that are only measured on', () => {
  const measured = pagesIn(`${ROOT}/fixtures/pages/measured`);

  it('say what a person reads there', () => {
    expect(measured.filter(({ expected }) => expected === null)).toEqual([]);
    expect(measured.length).toBeGreaterThan(0);
  });
});
