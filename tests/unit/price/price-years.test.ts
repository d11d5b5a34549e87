import { describe, expect, it } from 'vitest';
import type { PriceBand } from '../../../src/price/price-band';
import { priceYears } from '../../../src/price/price-years';

const seen = (price: number | null, date: string, kind: 'asked' | 'paid' = 'paid') =>
  ({ price, seen: { date, kind } }) as PriceBand['seen'][number];
const yearsOf = (all: PriceBand['seen'], kind: 'asked' | 'paid' = 'paid') =>
  priceYears({ seen: all, kind, askedToPaid: 1.25 } as PriceBand);

describe('a price over the years', () => {
  const nine = Array.from({ length: 9 }, (_, i) => seen(100 + i, `2025-0${i + 1}`));
  it('is told from ten prices on', () => {
    expect(yearsOf(nine)).toEqual([]);
    expect(yearsOf([...nine, seen(null, '2024')])).toEqual([]);
    expect(yearsOf([...nine, seen(90, '2024-11-03')])).toEqual([
      { year: '2024', middle: 90, count: 1 },
      { year: '2025', middle: 104, count: 9 },
    ]);
  });
  it('brings what is asked to what is paid, or the other way round', () => {
    expect(yearsOf([...nine, seen(125, '2024', 'asked')])[0]).toEqual({ year: '2024', middle: 100, count: 1 });
    expect(yearsOf([...nine, seen(100, '2024')], 'asked')[0]).toEqual({ year: '2024', middle: 125, count: 1 });
  });
});
