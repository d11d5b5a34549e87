import type { Harvest } from '../../../src/listing/types';

export function sampleHarvest(change: Partial<Harvest> = {}): Harvest {
  return {
    schema: 1,
    url: 'https://market.example/advert',
    base: 'https://market.example/advert',
    language: 'en',
    title: 'Corvane 6 sewing machine',
    metas: [['og:title', 'Corvane 6 sewing machine']],
    jsonLd: ['{"@type":"Product","name":"Corvane 6 sewing machine"}'],
    items: [{ types: ['https://schema.org/Product'], id: null, properties: [['offers', 1]], top: true }],
    rdfa: [{ parent: -1, tag: 'p', attributes: [['property', 'name']], text: 'Corvane 6' }],
    state: [{ depth: 2, siblings: 1, json: '{"title":"Corvane 6"}' }],
    page: {
      lines: [
        { text: 'Corvane 6 sewing machine', box: 0 },
        { text: '240 EUR', box: 1, runs: [{ at: 0, flags: 0, hint: 'price' }] },
      ],
      boxes: [
        { tag: 'h1', parent: -1, from: 0, to: 1, hint: '', level: 1 },
        { tag: 'p', parent: -1, from: 1, to: 2, hint: 'price' },
      ],
      pictures: [{ address: 'https://market.example/1.jpg', box: 1, line: 2, linked: false }],
      times: [{ value: '2026-05-01', line: 2 }],
    },
    unread: ['https://else.example/frame'],
    cut: false,
    ...change,
  };
}
