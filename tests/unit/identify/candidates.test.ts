import { describe, expect, it } from 'vitest';
import { candidates } from '../../../src/identify/candidates';
import type { Draft } from '../../../src/listing/types';
import { demo } from '../audit/support/demo';
import { readingOf } from '../claims/support/reading';

const of = (draft: Draft, serial?: string) =>
  candidates(readingOf(draft), serial ? demo.serials.find(serial) : [], demo);
const best = (draft: Draft, serial?: string): string | undefined => of(draft, serial)[0]?.model.id;
const share = (draft: Draft, model: string): number =>
  of(draft).find((one) => one.model.id === model)?.probability ?? Number.NaN;

describe('which models the thing can be', () => {
  it('the commonest, where nothing is said', () =>
    expect(best({ title: 'Grindlewade sewing machine' })).toBe('quarrendle'));
  it('the one that is named', () => expect(best({ title: 'Grindlewade Bodrannock' })).toBe('bodrannock'));
  it('the one that the serial was allotted to', () =>
    expect(best({ title: 'Grindlewade sewing machine' }, 'KD330000')).toBe('wendelow'));

  it('a feature that a model refutes makes it less likely, not impossible', () => {
    const plain = share({ title: 'Grindlewade sewing machine' }, 'quarrendle');
    const refuted = share({ title: 'Grindlewade sewing machine', description: 'Rotary hook.' }, 'quarrendle');
    expect(refuted).toBeLessThan(plain);
    expect(refuted).toBeGreaterThan(0);
  });
  it('what is said of another machine changes nothing', () =>
    expect(
      share({ title: 'Grindlewade sewing machine', description: 'I also have a rotary hook machine.' }, 'quarrendle'),
    ).toBe(share({ title: 'Grindlewade sewing machine' }, 'quarrendle')));

  it('the shares are of one whole, the likeliest first', () => {
    const all = of({ title: 'Grindlewade sewing machine' }).map((one) => one.probability);
    expect(all.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
    expect(all).toEqual([...all].sort((a, b) => b - a));
  });
  it('none where no pack covers it', () => expect(of({ title: 'Oak table' })).toEqual([]));
});
