import { describe, expect, it } from 'vitest';
import { comparing, type PriceKnowledge, type Wanted } from '../../../src/price/comparable';
import type { Observation } from '../../../src/price/observation';

const WANTED: Wanted = {
  models: new Set(['p/a']),
  members: new Set(),
  grade: 'good',
  finish: 'plain',
  currency: 'GBP',
  asOf: '2026-06-15',
};
const MIDS: Record<string, number> = { 'p/a good': 100, 'p/a worn': 50, 'p/b good': 200 };
const KNOWN: PriceKnowledge = {
  rates: [{ pack: 'small', from: 'EUR', to: 'GBP', date: '2025', rate: 0.8 }],
  index: null,
  mid: (model, grade) => MIDS[`${model} ${grade}`] ?? null,
};
const seen = (rest: Partial<Observation> = {}): Observation => ({
  model: 'p/a',
  kind: 'asked',
  amount: 80,
  currency: 'GBP',
  date: '2026-06-15',
  grade: 'good',
  ...rest,
});
const made = (rest: Partial<Observation>, known = KNOWN, wanted = WANTED) => comparing(wanted, known)(seen(rest));

describe('an observation made comparable', () => {
  it('of the same thing today counts as it is', () =>
    expect(made({})).toEqual({ price: 80, kind: 'asked', weight: 1 }));

  it('counts half after its half-life', () => {
    expect(made({ date: '2022-06-15' })).toMatchObject({ price: 80, weight: expect.closeTo(0.5, 3) });
  });

  it('an index brings it to today’s money and lets it count longer', () => {
    const index = [
      ['2018', 100],
      ['2026', 125],
    ] as const;
    expect(made({ date: '2018-06-15' }, { ...KNOWN, index })).toMatchObject({
      price: 100,
      weight: expect.closeTo(0.5, 3),
    });
  });

  it('another currency by its dated rate', () => expect(made({ currency: 'EUR' })).toMatchObject({ price: 64 }));
  it('another grade by the ratio of the stated medians', () =>
    expect(made({ grade: 'worn', amount: 45 })).toEqual({ price: 90, kind: 'asked', weight: 0.5 }));
  it('a sister model likewise, for less', () =>
    expect(made({ model: 'p/b', amount: 190 })).toEqual({ price: 95, kind: 'asked', weight: 0.1 }));
  it('a price without a grade counts for less', () =>
    expect(made({ grade: undefined })).toMatchObject({ weight: 0.7 }));
  it('one from which something is missing counts for less', () =>
    expect(made({ complete: false })).toMatchObject({ price: 80, weight: 0.5 }));
  it('a model of the type in question counts as it is, for less', () => {
    const type: Wanted = { ...WANTED, models: new Set(['t/t']), members: new Set(['p/a']) };
    expect(made({}, KNOWN, type)).toEqual({ price: 80, kind: 'asked', weight: 0.4 });
  });
  it('any grade is an answer where none is asked for', () =>
    expect(made({ grade: 'fine' }, KNOWN, { ...WANTED, grade: null })).toMatchObject({ price: 80, weight: 0.5 }));
  it('never counts for nothing', () => expect(made({ date: '1900' })).toMatchObject({ weight: 0.01 }));

  it.each<[string, Partial<Observation>]>([
    ['future', { date: '2026-07' }],
    ['no-rate', { currency: 'CHF' }],
    ['no-rate', { currency: 'EUR', date: '2015' }],
    ['finish', { finish: 'refinished' }],
    ['another-model', { model: 'p/z' }],
    ['another-grade', { grade: 'fine' }],
    ['amount', { amount: 0 }],
    ['amount', { amount: -3 }],
    ['amount', { amount: 1e12 }],
    ['amount', { amount: Number.POSITIVE_INFINITY }],
  ])('is left out: %s %o', (leftOut, rest) => expect(made(rest)).toEqual({ leftOut }));

  it('a refinished one is held against refinished ones', () => {
    expect(made({ finish: 'refinished' }, KNOWN, { ...WANTED, finish: 'refinished' })).toMatchObject({ price: 80 });
  });
});
