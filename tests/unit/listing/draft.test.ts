import { describe, expect, it } from 'vitest';
import { parseDrafts, readDraft } from '../../../src/listing/draft';

describe('parseDrafts', () => {
  it('takes one draft or a list of them', () => {
    expect(parseDrafts('{"title":"Hand crank"}')).toEqual([{ title: 'Hand crank' }]);
    expect(parseDrafts('\ufeff[{"id":"a","photos":["x.jpg"]},{}]')).toEqual([{ id: 'a', photos: ['x.jpg'] }, {}]);
  });

  it.each([
    ['{', 'The draft is not JSON.'],
    ['[]', 'The list holds no draft.'],
    ['5', 'A draft is an object with a title and a description.'],
    ['[{}, null]', 'Draft 2: A draft is an object with a title and a description.'],
    ['{"titel":"x"}', 'Unknown key "titel".'],
    ['[{"price\\nText":"x"}]', 'Draft 1: Unknown key "price Text".'],
    ['{"title":5}', '"title" must be text.'],
    ['{"photos":"x.jpg"}', '"photos" must be a list of texts.'],
    ['{"photos":[5]}', '"photos" must be a list of texts.'],
    [`[${'{},'.repeat(10_000)}{}]`, 'The list holds more than 10000 drafts.'],
  ])('%j: one line', (json, line) => {
    expect(parseDrafts(json)).toBe(line);
  });

  it('is not led astray by names of objects', () => {
    expect(parseDrafts('{"__proto__":{"title":"x"}}')).toBe('Unknown key "__proto__".');
  });
});

describe('readDraft', () => {
  it('takes every field as the seller wrote it', () => {
    const listing = readDraft({
      title: 'Hand  crank',
      description: 'First line.\n\nSecond <line>.',
      priceText: '£45 ono',
      conditionText: 'Good',
      serialText: 'K 20-417; 99 1',
      location: 'Upper Marl',
      language: 'EN-GB',
      listedDate: '2024-03-12',
      photos: ['a.jpg', 'b.jpg'],
    });
    expect(listing).toMatchObject({
      url: null,
      title: 'Hand crank',
      description: 'First line.\nSecond <line>.',
      price: { amount: '45', currency: 'GBP', how: 'asking' },
      priceText: '£45 ono',
      condition: 'Good',
      serials: ['K 20-417', '99 1'],
      place: 'Upper Marl',
      language: 'en-gb',
      listedDate: '2024-03-12',
      photos: ['a.jpg', 'b.jpg'],
      offers: 1,
    });
    expect(
      Object.values(listing.fields).every(
        ({ source, alternatives }) => source === 'draft' && alternatives.length === 0,
      ),
    ).toBe(true);
  });

  it('keeps a price text that is no amount, and invents nothing', () => {
    expect(readDraft({ priceText: 'make me an offer' })).toMatchObject({ price: null, priceText: 'make me an offer' });
    expect(readDraft({})).toMatchObject({
      title: '',
      description: '',
      price: null,
      priceText: '',
      serials: [],
      offers: 1,
    });
  });

  it('guesses the language from the words', () => {
    const description = 'Die Maschine ist alt und nicht geprüft, sie wurde für meine Mutter gekauft.';
    expect(readDraft({ title: 'Nähmaschine', description }).language).toBe('de');
  });
});
