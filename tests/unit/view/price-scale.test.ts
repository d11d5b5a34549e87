import { describe, expect, it } from 'vitest';
import { wholeMoney } from '../../../src/view/money';
import { rowsOf, scaleOf } from '../../../src/view/price-scale';

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
    expect([scale.low, scale.mid, scale.high, scale.asked].every(Number.isFinite)).toBe(true);
  });

  it('stands prices that were seen where they are, between the same ends', () => {
    const scale = scaleOf(band, 800, [50, 200, 400]);
    expect(scale.seen[0]).toBeCloseTo(8, 9);
    expect(scale.seen[1]).toBeCloseTo(scale.mid, 9);
    expect(scale.seen[2]).toBeCloseTo(scale.high, 9);
    expect(scale.asked).toBeCloseTo(92, 9);
    expect(scale.beyond).toBe(false);
  });

  it('lets no slip flatten the band: what is far out stands at the edge, and that is told', () => {
    const scale = scaleOf(band, null, [200, 90_000, 0.01]);
    expect(scale.beyond).toBe(true);
    expect(scale.seen[1]).toBeCloseTo(92, 9);
    expect(scale.seen[2]).toBeCloseTo(8, 9);
    expect(scale.high - scale.low).toBeGreaterThan(25);
  });
});

describe('the rows of marks', () => {
  it('put near ones above each other and far ones beside each other', () => {
    expect(rowsOf([10, 11, 12, 30], 3, 8)).toEqual([0, 1, 2, 0]);
    expect(rowsOf([12, 10], 3, 8)).toEqual([1, 0]);
    expect(rowsOf([], 3, 8)).toEqual([]);
  });
  it('are no more than there is room for, however many marks stand in one place', () => {
    const rows = rowsOf(new Array(50).fill(40), 3, 4);
    expect(Math.max(...rows)).toBe(3);
  });
});

describe('money', () => {
  it('of a band is not told to the cent', () => {
    expect([94.7, 152.2, 1337].map((amount) => wholeMoney(amount, 'EUR'))).toEqual(['€95', '€152', '€1,337']);
  });
});
