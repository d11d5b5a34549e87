import { describe, expect, it } from 'vitest';
import type { Pack } from '../../../src/pack/schema/index';
import { type StatedBand, statedBand } from '../../../src/price/stated-band';
import { knowing } from '../pack/support/knowledge';
import { smallPack } from '../pack/support/packs';

type Bands = NonNullable<NonNullable<Pack['prices']>['bands']>;
type Grades = NonNullable<NonNullable<Pack['prices']>['grades']>;

const band = (rest: Partial<Bands[number]>): Bands[number] => ({
  model: 'm',
  low: 50,
  high: 200,
  currency: 'GBP',
  date: '2026',
  ...rest,
});
const GRADES: Grades = [
  { id: 'worn', label: 'worn' },
  { id: 'good', label: 'good', usual: true },
];

function stated(grade: string | null, bands: Bands, grades = GRADES): StatedBand | null {
  const models = [{ id: 'm', label: 'Ottermere M', names: ['Ottermere M'] }];
  return statedBand('small/m', grade, knowing(smallPack({ models, prices: { grades, bands } })));
}

describe('the pack’s own band', () => {
  it('of the grade', () =>
    expect(stated('worn', [band({ grade: 'worn', low: 10, high: 40 }), band({ grade: 'good' })])).toMatchObject({
      low: 10,
      high: 40,
      grade: 'worn',
    }));
  it('of the usual grade where the advert gives none', () =>
    expect(stated(null, [band({ grade: 'worn', low: 10, high: 40 }), band({ grade: 'good' })])).toMatchObject({
      low: 50,
      grade: 'good',
    }));
  it('all as one wide band where no grade is usual', () =>
    expect(
      stated(
        null,
        [band({ grade: 'worn', low: 10, high: 40, weight: 2 }), band({ grade: 'good', weight: 3 })],
        [
          { id: 'worn', label: 'worn' },
          { id: 'good', label: 'good' },
        ],
      ),
    ).toMatchObject({ low: 10, high: 200, worth: 5, grade: null }));
  it('the newest of several', () =>
    expect(stated('good', [band({ date: '2024', low: 1, high: 9 }), band({ date: '2026-03' })])?.low).toBe(50));
  it('the median is the pack’s, else the geometric mean of the ends', () => {
    expect(stated('good', [band({ mid: 90 })])?.mid).toBe(90);
    expect(stated('good', [band({})])?.mid).toBe(100);
  });
  it('none of that grade is none', () => expect(stated('worn', [band({ grade: 'good' })])).toBeNull());
  it('none at all is none', () => expect(stated(null, [])).toBeNull());
});
