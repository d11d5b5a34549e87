import type { Harvest } from '../../../src/listing/types';

export function sampleHarvest(change: Partial<Harvest> = {}): Harvest {
  return {
    schema: 1,
    url: 'https://market.example/advert',
    language: 'en',
    candidates: [
      { field: 'title', value: 'Corvane 6 sewing machine', source: 'json-ld', weight: 0.9 },
      { field: 'price', value: '240', source: 'json-ld', weight: 0.9, currency: 'EUR', how: 'asking' },
    ],
    offers: 1,
    cut: false,
    ...change,
  };
}
