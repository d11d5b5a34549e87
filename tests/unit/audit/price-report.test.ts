import { describe, expect, it } from 'vitest';
import { audit } from '../../../src/engine';
import { readDraft } from '../../../src/listing/draft';
import type { Draft } from '../../../src/listing/types';
import type { Pack } from '../../../src/pack/schema/index';
import type { Rate } from '../../../src/pack/schema/prices';
import type { Observation } from '../../../src/price/observation';
import { AS_OF } from '../../corpus/labelled';
import { knowing } from '../pack/support/knowledge';
import { smallPack } from '../pack/support/packs';
import { auditOf, findingsOf } from './support/demo';

type Rates = NonNullable<NonNullable<Pack['prices']>['rates']>;

/** An Ottermere M: worn 20 to 80, good (the usual grade) 50 to 200 with a median of 100. */
function known(rates: Rates = [], currency = 'GBP') {
  const band = { model: 'm', currency, date: '2026-01' };
  return knowing(
    smallPack(
      {
        models: [
          { id: 'm', label: 'Ottermere M', names: ['Ottermere M'] },
          { id: 'n', label: 'Ottermere N', names: ['Ottermere N'] },
        ],
        wording: [{ id: 'painted', words: ['repainted'], unless: ['not repainted'], pricedApart: true }],
        prices: {
          factors: [
            {
              ...{ id: 'no-pedal', label: 'without its pedal', kind: 'completeness', times: 0.5 },
              ...{ words: ['no foot pedal'], source: 'book' },
            },
          ],
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
      },
      { sources: { book: 'Our book' } },
    ),
  );
}

const TITLE = 'Ottermere M sewing machine';
const SEEN: Observation = {
  ...{ model: 'small/m', kind: 'paid', amount: 100, currency: 'GBP', date: AS_OF, grade: 'good' },
};

const priceWith = (observations: Observation[], draft: Draft, rates?: Rate[]) =>
  audit(readDraft({ title: TITLE, language: 'en', ...draft }), known(), {
    ...{ asOf: AS_OF, observations, ...(rates ? { rates } : {}) },
  }).price;

const priceOf = (draft: Draft, rates?: Rates) =>
  auditOf({ title: 'Ottermere M sewing machine', language: 'en', ...draft }, known(rates)).price;

describe('where the price stands', () => {
  it.each([
    ['£100', 'within'],
    ['£200', 'within'],
    ['£201', 'high-side'],
    ['£380', 'high-side'],
    ['£390', 'above'],
    ['£50', 'within'],
    ['£49', 'low-side'],
    ['£27', 'low-side'],
    ['£25', 'below'],
  ])('%s: %s', (priceText, standing) => expect(priceOf({ priceText }).standing).toBe(standing));

  it('with ratio, probability and the band', () =>
    expect(priceOf({ priceText: '£200' })).toEqual({
      ...{ standing: 'within', why: null, ratio: 2, probability: 0.9, converted: null },
      ...{ taken: null, factors: [], seen: [] },
      band: {
        ...{ low: 50, mid: 100, high: 200, half: { low: expect.closeTo(70, -1), high: expect.closeTo(142, -1) } },
        ...{ currency: 'GBP', kind: 'paid', askedToPaid: expect.closeTo(1.11, 1), grade: 'good' },
        ...{ observations: 0, effective: 5, stated: 5 },
      },
    }));

  it('by the grade that the advert gives, the field for it first', () => {
    expect(priceOf({ priceText: '£60', conditionText: 'worn' }).band?.mid).toBe(40);
    expect(priceOf({ priceText: '£60', conditionText: 'worn', description: 'good' }).band?.mid).toBe(40);
    expect(priceOf({ priceText: '£60', description: 'Not worn.' }).band?.mid).toBe(100);
  });
});

describe('what can’t be compared, and why', () => {
  const whyOf = (draft: Draft, rates?: Rates) => {
    const { standing, why } = priceOf(draft, rates);
    return [standing, why];
  };
  it.each(['', 'make an offer'])('no amount: "%s"', (priceText) =>
    expect(whyOf({ priceText })).toEqual(['not-comparable', 'no-price']),
  );
  it('a start of an auction', () =>
    expect(whyOf({ priceText: 'Current bid: £10' })).toEqual(['not-comparable', 'bid']));
  it('a sign that several currencies share, and the pack’s is none of them', () => {
    expect(whyOf({ priceText: '$100' })).toEqual(['not-comparable', 'currency']);
    expect(whyOf({ priceText: '100 kr' })).toEqual(['not-comparable', 'currency']);
  });
  it('a bare number', () => expect(whyOf({ priceText: '100' })).toEqual(['not-comparable', 'currency']));
  it('another currency without a rate; with one it can', () => {
    expect(whyOf({ priceText: '€200' })).toEqual(['not-comparable', 'no-rate']);
    const rates = [{ from: 'EUR', to: 'GBP', date: '2026-01-01', rate: 0.5 }];
    expect(priceOf({ priceText: '€200' }, rates)).toMatchObject({
      ...{ standing: 'within', ratio: 1 },
      converted: { from: 'EUR', to: 'GBP', amount: 100, times: 0.5, date: '2026-01-01', pack: 'small' },
    });
  });
  it('a part, a wish, a lot', () =>
    expect(whyOf({ title: 'Wanted: Ottermere M sewing machine', priceText: '£100' })).toEqual([
      'not-comparable',
      'kind',
    ]));
  it('a refinished one, while no other refinished ones have been seen', () => {
    const draft = { priceText: '£150', description: 'Repainted in red.' };
    expect(whyOf(draft)).toEqual(['not-comparable', 'priced-apart']);
    const repainted = { ...SEEN, finish: 'refinished' as const };
    const own = [120, 150, 180].map((amount) => ({ ...repainted, amount }));
    const report = priceWith(own, draft);
    expect(report).toMatchObject({ standing: 'within', why: null, band: { observations: 3, stated: 0 } });
    expect(report.band?.mid).toBeCloseTo(150, -1);
  });
  it('words that deny it change nothing', () =>
    expect(priceOf({ priceText: '£150', description: 'Not repainted.' }).standing).toBe('within'));
  it('no band of that model, and no model', () => {
    expect(priceOf({ title: 'Ottermere N sewing machine', priceText: '£100' }).standing).toBe('no-band');
    expect(priceOf({ title: 'Sewing machine', priceText: '£100' }).standing).toBe('no-band');
  });
});

describe('the user’s own observations', () => {
  const draft = { priceText: '£100' };
  it('move the band, and are told with what they counted for', () => {
    const { band, seen } = priceWith([{ ...SEEN, amount: 160 }], draft);
    expect(band).toMatchObject({ observations: 1, stated: 5 });
    expect(band!.mid).toBeGreaterThan(100);
    expect(seen).toMatchObject([{ pack: null, amount: 160, price: 160, counted: 1, leftOut: null, grade: 'good' }]);
    expect(seen[0]).toMatchObject({ place: null, link: null, note: null });
    expect(seen[0]!.pull).toBeGreaterThan(1);
    const where = { place: 'Oberwarding', link: 'https://market.example/1', note: 'with its case' };
    expect(priceWith([{ ...SEEN, amount: 160, ...where }], draft).seen).toMatchObject([where]);
  });
  it('make a wide band of a model that no pack states one for', () => {
    const own = [70, 80, 95].map((amount) => ({ ...SEEN, model: 'small/n', amount }));
    const report = priceWith(own, { title: 'Ottermere N sewing machine', priceText: '£90' });
    expect(report).toMatchObject({ standing: 'within', band: { observations: 3, stated: 0, currency: 'GBP' } });
    expect(report.band!.high / report.band!.low).toBeGreaterThan(3);
  });
  it('that can’t be used are told with the reason', () => {
    const own = [
      { ...SEEN, currency: 'CHF' },
      { ...SEEN, date: '2030' },
    ];
    const { band, seen } = priceWith(own, draft);
    expect(band).toMatchObject({ low: 50, mid: 100, high: 200, observations: 0 });
    expect(seen.map(({ leftOut }) => leftOut)).toEqual(['no-rate', 'future']);
  });
  it('in another currency count by a rate that the user has typed in', () => {
    const rates = [{ from: 'CHF', to: 'GBP', date: '2026', rate: 0.9 }];
    expect(priceWith([{ ...SEEN, currency: 'CHF' }], draft, rates).band?.observations).toBe(1);
  });
});

describe('what the price depends on', () => {
  it('is counted into the band and told with its effect', () => {
    const report = priceOf({ priceText: '£100', description: 'No foot pedal.' });
    expect(report.factors).toEqual([
      {
        ...{ pack: 'small', entry: 'no-pedal', kind: 'completeness', text: 'without its pedal', times: 0.5 },
        source: 'Our book',
      },
    ]);
    expect(report).toMatchObject({ ratio: 2, band: { low: 25, mid: 50, high: 100 } });
    const [finding] = findingsOf('price', { title: TITLE, priceText: '£100', description: 'No foot pedal.' }, known());
    expect(finding?.said.map(({ quote }) => quote)).toEqual(['£100', 'No foot pedal']);
    expect(finding?.known[1]?.text).toContain('0.5 times the price');
  });
});

describe('the finding', () => {
  const sentence = (priceText: string) => findingsOf('price', { title: TITLE, priceText }, known())[0];
  it('says the ratio and the middle, and what stands behind them', () => {
    expect(sentence('£150')?.text).toContain('1.5 times the middle, £100');
    expect(sentence('£150')?.known[0]?.text).toContain('the pack’s word of 2026-01, worth 5 prices');
  });
  it('of far below asks to pay nothing ahead', () => {
    expect(sentence('£20')).toMatchObject({ standing: 'caution', text: expect.stringContaining('pay nothing ahead') });
  });
});

describe('a sign that several currencies share', () => {
  const inDollars = known([], 'USD');
  it.each([
    ['$100', 'within', 'USD'],
    ['100 dollars', 'within', 'USD'],
    ['US$100', 'within', null],
    ['C$100', 'not-comparable', null],
    ['100', 'not-comparable', null],
  ])('%s is taken for the one that the pack prices in: %s', (priceText, standing, taken) => {
    expect(auditOf({ title: TITLE, language: 'en', priceText }, inDollars).price).toMatchObject({ standing, taken });
  });
});
