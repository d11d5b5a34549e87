import { describe, expect, it } from 'vitest';
import type { Draft } from '../../../src/listing/types';
import type { Pack } from '../../../src/pack/schema/index';
import { knowing } from '../pack/support/knowledge';
import { smallPack } from '../pack/support/packs';
import { auditOf } from './support/demo';

type Rates = NonNullable<NonNullable<Pack['prices']>['rates']>;

/** An Ottermere M: worn 20 to 80, good (the usual grade) 50 to 200 with a median of 100. */
function known(rates: Rates = []) {
  const band = { model: 'm', currency: 'GBP', date: '2026-01' };
  return knowing(
    smallPack({
      models: [
        { id: 'm', label: 'Ottermere M', names: ['Ottermere M'] },
        { id: 'n', label: 'Ottermere N', names: ['Ottermere N'] },
      ],
      prices: {
        grades: [
          { id: 'worn', label: 'worn', words: ['worn'] },
          { id: 'good', label: 'good', words: ['good'], usual: true },
        ],
        bands: [
          { ...band, grade: 'worn', low: 20, high: 80, weight: 3 },
          { ...band, grade: 'good', low: 50, mid: 100, high: 200, weight: 5 },
        ],
        rates,
      },
    }),
  );
}

const priceOf = (draft: Draft, rates?: Rates) =>
  auditOf({ title: 'Ottermere M sewing machine', language: 'en', ...draft }, known(rates)).price;

describe('where the price stands', () => {
  it.each([
    ['£100', 'within'],
    ['£200', 'within'],
    ['£201', 'high-side'],
    ['£280', 'high-side'],
    ['£300', 'above'],
    ['£50', 'within'],
    ['£49', 'low-side'],
    ['£36', 'low-side'],
    ['£30', 'below'],
  ])('%s: %s', (priceText, standing) => expect(priceOf({ priceText }).standing).toBe(standing));

  it('with ratio, probability and the band', () =>
    expect(priceOf({ priceText: '£200' })).toEqual({
      standing: 'within',
      ratio: 2,
      probability: 0.9,
      band: { low: 50, mid: 100, high: 200, currency: 'GBP', observations: 0, effective: 5 },
    }));

  it('by the grade that the advert gives, the field for it first', () => {
    expect(priceOf({ priceText: '£60', conditionText: 'worn' }).band?.mid).toBe(40);
    expect(priceOf({ priceText: '£60', conditionText: 'worn', description: 'good' }).band?.mid).toBe(40);
    expect(priceOf({ priceText: '£60', description: 'Not worn.' }).band?.mid).toBe(100);
  });
});

describe('what can’t be compared', () => {
  it.each(['', '£0', 'make an offer'])('no amount: "%s"', (priceText) =>
    expect(priceOf({ priceText }).standing).toBe('not-comparable'),
  );
  it('a bid', () => expect(priceOf({ priceText: 'Current bid: £10' }).standing).toBe('not-comparable'));
  it('another currency without a rate; with one it can', () => {
    expect(priceOf({ priceText: '€200' }).standing).toBe('not-comparable');
    const rates = [{ from: 'EUR', to: 'GBP', date: '2026-01-01', rate: 0.5 }];
    expect(priceOf({ priceText: '€200' }, rates)).toMatchObject({ standing: 'within', ratio: 1 });
  });
  it('a part, a wish, a lot', () =>
    expect(priceOf({ title: 'Wanted: Ottermere M sewing machine', priceText: '£100' }).standing).toBe(
      'not-comparable',
    ));
  it('no band of that model, and no model', () => {
    expect(priceOf({ title: 'Ottermere N sewing machine', priceText: '£100' }).standing).toBe('no-band');
    expect(priceOf({ title: 'Sewing machine', priceText: '£100' }).standing).toBe('no-band');
  });
});
