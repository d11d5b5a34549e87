import { describe, expect, it } from 'vitest';
import { conversion, convert, convertNear, ratesKnown } from '../../../src/price/rates';
import { knowing } from '../pack/support/knowledge';
import { smallPack } from '../pack/support/packs';

describe('another currency', () => {
  const rates = [
    { from: 'EUR', to: 'GBP', date: '2025-01-01', rate: 0.8, pack: 'club' },
    { from: 'EUR', to: 'GBP', date: '2026-06-01', rate: 0.5, pack: null },
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
  it('says by which rate, of which day and from whom', () => {
    expect(conversion('EUR', 'GBP', rates, '2026-01-01')).toEqual({ times: 0.8, date: '2025-01-01', pack: 'club' });
    expect(conversion('GBP', 'EUR', rates, '2026-11-25')).toEqual({ times: 2, date: '2026-06-01', pack: null });
  });
  it('for a day long ago only by a rate of about then', () => {
    expect(convertNear(100, 'EUR', 'GBP', rates, '2022-06')).toBe(80);
    expect(convertNear(100, 'EUR', 'GBP', rates, '2021')).toBeNull();
    expect(convertNear(100, 'GBP', 'GBP', [], '1950')).toBe(100);
  });
  it('what the user typed in stands beside what packs say, and before it on the same day', () => {
    const typed = { from: 'EUR', to: 'GBP', date: '2026-06', rate: 0.9 };
    const known = knowing(smallPack({ prices: { rates: [{ ...typed, rate: 0.8 }] } }));
    expect(ratesKnown([typed], known)).toEqual([
      { ...typed, pack: null },
      { ...typed, rate: 0.8, pack: 'small' },
    ]);
    expect(convert(100, 'EUR', 'GBP', ratesKnown([typed], known), '2026-11-25')).toBe(90);
  });
});
