// @vitest-environment jsdom
import { describe, expect, it } from 'vitest';
import type { PriceSeen } from '../../../../src/audit/types';
import { PriceScale } from '../../../../src/view/prices/PriceScale';
import { stage } from '../rendered';

const { root, show, all } = stage();
const BAND = { low: 95, mid: 150, high: 220, currency: 'GBP' };
const seen = (rest: Partial<PriceSeen> = {}): PriceSeen => ({
  ...{ pack: null, entry: null, source: null, model: 'club/m', label: 'M', kind: 'paid', amount: 120 },
  ...{ currency: 'GBP', date: '2026-03', grade: null, place: null, link: null, note: null },
  ...{ price: 120, counted: 1, pull: 1, leftOut: null },
  ...rest,
});
const label = () => root.querySelector('svg[role="img"]')?.getAttribute('aria-label');

describe('the drawn scale of prices', () => {
  it('tells asked and paid apart by shape and by word, and says how many of each', () => {
    const prices = [seen(), seen({ price: 140 }), seen({ kind: 'asked', amount: 200, price: 200, counted: 0.4 })];
    show(<PriceScale band={BAND} asked={{ value: 240, text: '£240' }} seen={prices} />);
    expect(all('.scale [data-kind="paid"] rect')).toHaveLength(2);
    expect(all('.scale [data-kind="asked"] circle')).toHaveLength(1);
    expect(root.querySelector('figcaption')?.textContent).toMatch(/this price.*asked.*paid.*eight in ten.*Paler/);
    expect(label()).toContain('this one £240. On it one price asked and 2 paid');
    expect(root.querySelector('.scale [data-kind="asked"] title')?.textContent).toBe('£200 asked, 2026-03');
  });

  it('draws what was counted alone, the paler the less it counts', () => {
    show(<PriceScale band={BAND} asked={null} seen={[seen({ counted: 0.1 }), seen({ price: null })]} />);
    expect(all('.scale [data-kind]')).toHaveLength(1);
    expect(Number(root.querySelector('.scale [data-kind]')?.getAttribute('opacity'))).toBeCloseTo(0.46, 9);
    expect(root.querySelector('figcaption')?.textContent).not.toContain('this price');
  });

  it('without any price seen is the band alone, without a legend', () => {
    show(<PriceScale band={BAND} asked={null} seen={[]} />);
    expect(root.querySelector('figcaption')).toBeNull();
    expect(label()).toBe('Scale of prices: usual from £95 to £220, middle £150.');
  });

  it('says where marks stand for prices further out', () => {
    show(<PriceScale band={BAND} asked={null} seen={[seen({ price: 90_000 })]} />);
    expect(root.querySelector('figcaption')?.textContent).toContain('further out');
  });
});
