import { describe, expect, it } from 'vitest';
import { leavesOf } from '../../../src/identify/leaves';
import { demo } from '../audit/support/demo';

const of = (ref: string) => leavesOf(demo.attributes.get(ref)!)!;

describe('the values that stand for themselves', () => {
  it('a wider value is no leaf; who says it says one of its kinds', () => {
    const bobbin = of('trade/bobbin');
    expect(bobbin.values).toEqual(['long', 'class-15', 'class-66', 'other-round']);
    expect(bobbin.covers.get('round')).toEqual([1, 2, 3]);
    expect(bobbin.covers.get('long')).toEqual([0]);
  });
  it('yes and no', () => expect([...of('trade/drop-feed').covers.keys()]).toEqual([true, false]));
  it('a measure has none', () => expect(leavesOf(demo.attributes.get('trade/weight')!)).toBeNull());
  it('a choice among hundreds is none', () => {
    const values = Array.from({ length: 101 }, (_, i) => ({ id: `v-${i}`, label: 'v' }));
    const def = { id: 'a', kind: 'choice' as const, label: 'a', values };
    expect(leavesOf({ ref: 'p/a', pack: 'p', id: 'a', def })).toBeNull();
    expect(leavesOf({ ref: 'p/a', pack: 'p', id: 'a', def: { ...def, values: values.slice(1) } })).not.toBeNull();
  });
  it('values within each other in a ring are all leaves', () => {
    const ring = leavesOf({
      ...{ ref: 'p/a', pack: 'p', id: 'a' },
      def: {
        ...{ id: 'a', kind: 'choice', label: 'a' },
        values: [
          { id: 'x', label: 'x', within: 'y' },
          { id: 'y', label: 'y', within: 'x' },
        ],
      },
    });
    expect(ring?.values).toEqual(['x', 'y']);
    expect(ring?.covers.get('x')).toEqual([0, 1]);
  });
});
