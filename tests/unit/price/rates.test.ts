import { describe, expect, it } from 'vitest';
import { convert } from '../../../src/price/rates';

describe('another currency', () => {
  const rates = [
    { from: 'EUR', to: 'GBP', date: '2025-01-01', rate: 0.8 },
    { from: 'EUR', to: 'GBP', date: '2026-06-01', rate: 0.5 },
  ];
  it('by the newest rate not after the day', () => {
    expect(convert(100, 'EUR', 'GBP', rates, '2026-01-01')).toBe(80);
    expect(convert(100, 'EUR', 'GBP', rates, '2026-11-25')).toBe(50);
  });
  it('before the oldest by the oldest', () => expect(convert(100, 'EUR', 'GBP', rates, '2020-01-01')).toBe(80));
  it('in either direction', () => expect(convert(100, 'GBP', 'EUR', rates, '2026-11-25')).toBe(200));
  it('none without a rate; the same currency needs none', () => {
    expect(convert(100, 'CHF', 'GBP', rates, '2026-11-25')).toBeNull();
    expect(convert(100, 'CHF', 'CHF', [], '2026-11-25')).toBe(100);
  });
});
