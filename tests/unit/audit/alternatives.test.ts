import { describe, expect, it } from 'vitest';
import { type PriceAsked, priceEnquiry } from '../../../src/audit/price-enquiry';
import type { Pack } from '../../../src/pack/schema/index';
import { knowing } from '../pack/support/knowledge';
import { smallPack } from '../pack/support/packs';

type Rates = NonNullable<NonNullable<Pack['prices']>['rates']>;

/** Three models alike in two features of three, the last one of another kind. */
function known(rates: Rates = []) {
  const model = (id: string, facts: Record<string, unknown>) => ({
    ...{ id, label: `Ottermere ${id}`, names: [], suits: { good: ['Long seams.'], poor: ['Stretchy cloth.'] } },
    facts,
  });
  const band = { date: '2026', weight: 5 };
  return knowing(
    smallPack({
      attributes: [
        { id: 'arm', label: 'free arm', kind: 'yes-no' },
        { id: 'drop', label: 'drop feed', kind: 'yes-no' },
        { id: 'lamp', label: 'lamp', kind: 'yes-no' },
        {
          ...{ id: 'frame', label: 'frame', kind: 'choice' },
          values: [
            { id: 'iron', label: 'cast iron' },
            { id: 'light', label: 'aluminium' },
          ],
        },
      ],
      models: [
        model('a', { arm: false, drop: true, lamp: true, frame: 'iron' }),
        model('b', { arm: true, drop: true, lamp: true, frame: 'iron' }),
        model('c', { arm: false, drop: false, lamp: true, frame: 'iron' }),
        model('d', { arm: false, drop: true, lamp: true, frame: 'light' }),
        model('e', { arm: true, drop: false, lamp: false, frame: 'light' }),
      ],
      prices: {
        bands: [
          { ...band, model: 'a', low: 100, high: 200, currency: 'GBP' },
          ...['b', 'c', 'e'].map((id) => ({ ...band, model: id, low: 50, high: 100, currency: 'GBP' })),
          { ...band, model: 'd', low: 50, high: 100, currency: 'EUR' },
        ],
        rates,
      },
    } as unknown as Partial<Pack>),
  );
}

const ASKED: PriceAsked = {
  ...{ model: 'small/a', grade: null, finish: 'plain', asking: null, asOf: '2026-11-25', own: [], rates: [] },
};
const answer = (rates?: Rates) => priceEnquiry(ASKED, known(rates))!;
const other = (id: string, rates?: Rates) => answer(rates).alternatives.find(({ model }) => model === `small/${id}`);

describe('what else would do', () => {
  it('says what such a thing is good for and what it can’t do', () =>
    expect(answer().suits).toEqual({ good: ['Long seams.'], poor: ['Stretchy cloth.'] }));

  it('what is alike, with what is gained, lost, or another thing instead', () => {
    expect(other('b')).toMatchObject({
      common: expect.arrayContaining(['frame: cast iron']),
      differs: [{ name: 'free arm', change: 'gained' }],
    });
    expect(other('c')?.differs).toMatchObject([{ name: 'drop feed', change: 'lost' }]);
    expect(other('d')?.differs).toMatchObject([
      { name: 'frame', here: 'cast iron', there: 'aluminium', change: 'other' },
    ]);
  });

  it('nothing that has less than half of it in common', () => expect(other('e')).toBeUndefined());

  it('with its band, in the money of this one’s too where a rate is known', () => {
    expect(other('b')).toMatchObject({ band: { low: 50, high: 100, currency: 'GBP' }, here: null });
    expect(other('d')).toMatchObject({ band: { currency: 'EUR' }, here: null });
    const rate = { from: 'EUR', to: 'GBP', date: '2026-06', rate: 0.8 };
    expect(other('d', [rate])?.here).toEqual({ low: 40, high: 80, currency: 'GBP' });
  });
});
