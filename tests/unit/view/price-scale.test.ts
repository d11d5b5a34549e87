import { describe, expect, it } from 'vitest';
import { wholeMoney } from '../../../src/view/money';
import { scaleOf } from '../../../src/view/price-scale';

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
  it('of a band is not told to the cent', () => {
    expect([94.7, 152.2, 1337].map((amount) => wholeMoney(amount, 'EUR'))).toEqual(['€95', '€152', '€1,337']);
  });
});
