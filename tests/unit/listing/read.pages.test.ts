import { describe, expect, it } from 'vitest';
import { readListing } from '../../../src/listing/read';
import { documentOf } from './dom';
import { aroundPages } from './pages/around';
import { columnPages } from './pages/columns';
import { continental } from './pages/continental';
import { english } from './pages/english';
import { headPages } from './pages/heads';
import { layouts } from './pages/layouts';
import { prices } from './pages/prices';
import { sectionPages } from './pages/sections';
import { wordsAndFacts } from './pages/words-and-facts';

const pages = [
  ...english,
  ...continental,
  ...layouts,
  ...wordsAndFacts,
  ...columnPages,
  ...sectionPages,
  ...headPages,
  ...aroundPages,
  ...prices,
];

describe.each(pages)('$name', ({ html, expected, absent }) => {
  const listing = readListing(documentOf(html));

  it.each(Object.entries(expected))('%s', (field, value) => {
    expect(listing[field as keyof typeof listing]).toEqual(value);
  });

  it('leaves out what is not the advert', () => {
    const { fields: _, ...said } = listing;
    for (const text of absent ?? []) expect(JSON.stringify(said)).not.toContain(text);
    // On every page: the texts are tidy.
    for (const text of [said.title, said.description, said.details, said.priceText]) {
      expect(text).toBe(text.trim());
      expect(text).not.toMatch(/[ \t]{2}|\n\n| \n|\n |&amp;|\ufffd/);
    }
  });
});
