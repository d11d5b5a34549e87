import { describe, expect, it } from 'vitest';
import { readDraft } from '../../../src/listing/draft';

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
