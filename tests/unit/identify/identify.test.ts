import { describe, expect, it } from 'vitest';
import { type Candidate, candidatesOf, identify } from '../../../src/identify/identify';
import type { Draft } from '../../../src/listing/types';
import { demo } from '../audit/support/demo';
import { readingOf } from '../claims/support/reading';

const of = (draft: Draft, answers = {}): Candidate[] => {
  const reading = readingOf(draft);
  return candidatesOf(identify({ reading, serial: reading.serials[0] ?? null, answers }, demo));
};
const best = (draft: Draft, answers = {}): string | undefined => of(draft, answers)[0]?.model.id;
const share = (draft: Draft, model: string, answers = {}): number =>
  of(draft, answers).find((one) => one.model.id === model)?.probability ?? Number.NaN;

describe('which one the thing can be', () => {
  it('the commonest of its maker, where nothing else is said', () =>
    expect(best({ title: 'Grindlewade sewing machine' })).toBe('quarrendle'));
  it('the one that is named', () => expect(best({ title: 'Grindlewade Bodrannock' })).toBe('bodrannock'));
  it('the one that the serial was allotted to, whatever its name', () => {
    expect(best({ title: 'Grindlewade sewing machine', serialText: 'KD330000' })).toBe('wendelow');
    expect(best({ title: 'Grindlewade Cressiter', serialText: 'KD330000' })).toBe('wendelow');
  });

  it('a feature that a model refutes makes it less likely, not impossible', () => {
    const plain = share({ title: 'Grindlewade sewing machine' }, 'quarrendle');
    const refuted = share({ title: 'Grindlewade sewing machine', description: 'Rotary hook.' }, 'quarrendle');
    expect(refuted).toBeLessThan(plain / 2);
    expect(refuted).toBeGreaterThan(0);
  });
  it('what is said of another machine changes nothing', () =>
    expect(
      share({ title: 'Grindlewade sewing machine', description: 'I also have a rotary hook machine.' }, 'quarrendle'),
    ).toBe(share({ title: 'Grindlewade sewing machine' }, 'quarrendle')));

  it('what the viewer saw outweighs what the seller says', () => {
    const draft = { title: 'Grindlewade Cressiter', description: 'Cast iron, very heavy.' };
    expect(best(draft)).toBe('cressiter');
    expect(best(draft, { 'trade/frame': 'aluminium' })).toBe('wendelow');
  });
  it('“can’t tell” tells nothing', () => {
    const draft = { title: 'Grindlewade Cressiter' };
    expect(share(draft, 'cressiter', { 'trade/frame': null })).toBe(share(draft, 'cressiter'));
  });

  it('the shares are at most one whole, the likeliest first', () => {
    const all = of({ title: 'Grindlewade sewing machine' }).map((one) => one.probability);
    expect(all.reduce((a, b) => a + b, 0)).toBeLessThan(1);
    expect(all).toEqual([...all].sort((a, b) => b - a));
  });
});
