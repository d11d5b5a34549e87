import { describe, expect, it } from 'vitest';
import type { Knowledge } from '../../../src/pack/knowledge';
import type { Pack } from '../../../src/pack/schema/index';
import type { Observation } from '../../../src/price/observation';
import { type PriceQuestion, priceBand } from '../../../src/price/price-band';
import { knowing, modelOf } from '../pack/support/knowledge';
import { smallPack } from '../pack/support/packs';

type Prices = NonNullable<Pack['prices']>;

/** Two makers' models of one type, and one of another kind. */
function known(prices: Prices = {}): Knowledge {
  const model = (id: string, type?: string) => ({ id, label: `Ottermere ${id}`, names: [], ...(type ? { type } : {}) });
  const band = { currency: 'GBP', date: '2020', kind: 'paid' as const, weight: 6, grade: 'good' };
  return knowing(
    smallPack({
      models: [model('a', 'big'), model('b', 'big'), model('c')],
      types: [{ id: 'big', label: 'big one', names: [] }],
      prices: {
        grades: [
          { id: 'good', label: 'good', usual: true },
          { id: 'worn', label: 'worn' },
        ],
        bands: [
          { ...band, model: 'a', low: 50, mid: 80, high: 140 },
          { ...band, model: 'b', low: 100, mid: 160, high: 280 },
        ],
        ...prices,
      },
    }),
  );
}

const ask = (model: string, rest: Partial<PriceQuestion> = {}, knowledge = known()) =>
  priceBand({ models: [modelOf(knowledge, `small/${model}`)], grade: null, asOf: '2026-06-15', ...rest }, knowledge);
const seen = (rest: Partial<Observation> = {}): Observation => ({
  ...{ model: 'small/a', kind: 'paid', amount: 120, currency: 'GBP', date: '2026-06', grade: 'good' },
  ...rest,
});

describe('the band of a question', () => {
  it('without observations is exactly the stated one', () =>
    expect(ask('a')).toMatchObject({ low: 50, mid: 80, high: 140, kind: 'paid', observations: 0, effective: 6 }));

  it('what was seen moves it, and is told with what it counted for', () => {
    const band = ask('a', { own: [seen()] })!;
    expect(band.mid).toBeGreaterThan(80);
    expect(band).toMatchObject({ observations: 1, effective: expect.closeTo(7, 1) });
    expect(band.seen).toMatchObject([{ pack: null, of: 'same', price: 120, leftOut: null }]);
  });

  it('a pack’s observations count as the user’s own do', () => {
    const { grade, ...def } = seen({ model: 'a' });
    const observations = [{ ...def, grade: grade! } as NonNullable<Prices['observations']>[number]];
    const band = ask('a', {}, known({ observations }))!;
    expect(band.mid).toBeCloseTo(ask('a', { own: [seen()] })!.mid, 9);
    expect(band.seen[0]?.pack).toEqual({ id: 'small', entry: 'observation-1', source: null });
  });

  it('a sister’s price is likened to it by the stated middles', () =>
    expect(ask('a', { own: [seen({ model: 'small/b', amount: 200 })] })!.seen).toMatchObject([
      { of: 'sister', price: 100, counted: expect.closeTo(0.1, 2) },
    ]));

  it('what is no relation is not even looked at', () =>
    expect(ask('a', { own: [seen({ model: 'small/c' })] })!.seen).toEqual([]));

  it('an index brings the stated band to today’s money as it does what was seen', () => {
    const index = [
      {
        ...{ currency: 'GBP', label: 'prices' },
        points: [
          ['2020', 100],
          ['2025', 150],
        ] as [string, number][],
      },
    ];
    const band = ask('a', { own: [seen({ amount: 80, date: '2020-06' })] }, known({ index }))!;
    expect(band.seen[0]?.price).toBeCloseTo(120, 9);
    expect(band.mid).toBeCloseTo(120, 6);
    expect(band.index).toEqual({ source: null, last: '2025' });
  });

  it('factors multiply all of it', () => {
    const [plain, half] = [ask('a', { own: [seen()] })!, ask('a', { own: [seen()], times: 0.5 })!];
    for (const end of ['low', 'mid', 'high'] as const) expect(half[end]).toBeCloseTo(plain[end] / 2, 9);
  });

  it('one wild price is held, unless that step is switched off', () => {
    const own = [...[75, 80, 85, 90, 78, 84].map((amount) => seen({ amount })), seen({ amount: 9000 })];
    const [held, exact] = [ask('a', { own })!, ask('a', { own, robust: false })!];
    expect(held.mid).toBeLessThan(100);
    expect(exact.mid).toBeGreaterThan(held.mid * 1.2);
    expect(held.seen[6]!.counted).toBeLessThan(0.05);
    expect(exact.seen[6]!.counted).toBeGreaterThan(0.9);
  });

  it('says by how much each price moves the middle', () => {
    const own = [seen({ amount: 90 }), seen({ amount: 200 })];
    const band = ask('a', { own, robust: false })!;
    const without = ask('a', { own: own.slice(0, 1), robust: false })!;
    expect(band.seen[1]!.pull).toBeCloseTo(band.mid / without.mid, 6);
  });
});

describe('without a stated band', () => {
  it('a handful of one’s own observations makes a wide one', () => {
    const own = [80, 90, 100].map((amount) => seen({ model: 'small/c', amount }));
    const band = ask('c', { own })!;
    expect(band.stated).toBeNull();
    expect(band.mid).toBeCloseTo(90, -1);
    expect(band.high / band.low).toBeGreaterThan(3);
    const more = ask('c', { own: [...own, ...own, ...own, ...own] })!;
    expect(more.high / more.low).toBeLessThan(band.high / band.low);
  });
  it('fewer make none', () =>
    expect(ask('c', { own: [seen({ model: 'small/c' }), seen({ model: 'small/c' })] })).toBeNull());
  it('nor do a few that are very old', () => {
    const own = [80, 90, 100].map((amount) => seen({ model: 'small/c', amount, date: '1990' }));
    expect(ask('c', { own })).toBeNull();
  });
  it('a type is priced by what was seen of its models', () => {
    const own = [80, 90, 100, 85, 95, 88, 92, 97, 83, 91, 99].map((amount) => seen({ amount }));
    expect(ask('big', { own })!.seen.every(({ of, counted }) => of === 'member' && counted > 0)).toBe(true);
  });
  it('refinished ones are priced by refinished ones alone', () => {
    expect(ask('a', { finish: 'refinished' })).toBeNull();
    const own = [150, 160, 170].map((amount) => seen({ amount, finish: 'refinished' }));
    expect(ask('a', { own, finish: 'refinished' })!.mid).toBeCloseTo(160, -1);
  });
});
