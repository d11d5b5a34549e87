import { describe, expect, it } from 'vitest';
import { moneyText, roundMoney } from '../../../src/view/money';
import { scaleOf } from '../../../src/view/price-scale';
import { langOf, shown } from '../../../src/view/shown';

describe('the scale of prices', () => {
  const band = { low: 100, mid: 200, high: 400 };

  it('puts half and double equally far from the middle', () => {
    const scale = scaleOf(band, null);
    expect(scale.mid - scale.low).toBeCloseTo(scale.high - scale.mid, 6);
    expect(scale.asked).toBeNull();
  });

  it.each([1, 99, 100, 200, 400, 401, 1_000_000])('keeps every mark on the scale, and in order, for %i', (asked) => {
    const scale = scaleOf(band, asked);
    const marks = [scale.low, scale.mid, scale.high, scale.asked ?? -1];
    for (const mark of marks) {
      expect(mark).toBeGreaterThanOrEqual(8 - 1e-9);
      expect(mark).toBeLessThanOrEqual(92 + 1e-9);
    }
    expect(Math.sign((scale.asked ?? 0) - scale.low)).toBe(Math.sign(asked - band.low));
    expect(Math.sign((scale.asked ?? 0) - scale.high)).toBe(Math.sign(asked - band.high));
  });

  it('stands a price of nothing at the low end', () => {
    const { asked, low } = scaleOf(band, 0);
    expect(asked).toBe(8);
    expect(low).toBe(8);
  });

  it('does not break on a band without width', () => {
    const scale = scaleOf({ low: 50, mid: 50, high: 50 }, 50);
    expect(Object.values(scale).every((mark) => mark !== null && Number.isFinite(mark))).toBe(true);
  });
});

describe('money', () => {
  it.each([
    ['1340.00', 'EUR', '€1,340'],
    ['12.5', 'GBP', '£12.50'],
    ['1340', null, '1,340'],
    ['950', 'JPY', '¥950'],
    ['20', '<b>', '20 <b>'],
    ['much', 'EUR', 'much'],
  ])('%s %s is written %s', (amount, currency, text) => {
    expect(moneyText(amount, currency)).toBe(text);
  });

  it('does not pretend to know a band to the cent', () => {
    expect([94.7, 152.2, 1337].map((amount) => roundMoney(amount, 'EUR'))).toEqual(['€95', '€150', '€1,340']);
  });
});

describe('text from pages', () => {
  it('is never cut between the halves of a character', () => {
    const text = '🧵'.repeat(20);
    expect(shown(text, 5)).toMatch(/^🧵🧵…/u);
  });

  it.each(['en', 'de-AT', 'zh-Hant-TW'])('may name its language %s', (tag) => {
    expect(langOf(tag)).toBe(tag);
  });

  it.each(['', 'e', '"><script>', 'en"', 'x'.repeat(50), null])('may not name as a language: %s', (tag) => {
    expect(langOf(tag)).toBeUndefined();
  });
});
