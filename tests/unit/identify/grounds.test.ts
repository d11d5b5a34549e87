import { describe, expect, it } from 'vitest';
import { weighed } from '../../../src/identify/grounds';
import { identify } from '../../../src/identify/identify';
import { knowledgeOf, readingWith } from './support/small';

const knowledge = knowledgeOf({
  attributes: { a: ['x', 'y'], b: ['x', 'y'] },
  types: [
    { id: 'm', number: 400, survival: 1, facts: { a: 'x', b: 'x' } },
    { id: 'n', number: 100, survival: 1, facts: { a: 'y', b: 'x' } },
  ],
});
const answers = { 'small/a': 'x', 'small/b': 'y' };
const identified = identify({ reading: readingWith(knowledge, [['a', 'y']]), serial: null, answers }, knowledge);
const [forFirst, forSecond] = weighed(identified, [
  { own: 0, rival: 1 },
  { own: 1, rival: 0 },
]);
const bits = (list: typeof forFirst, kind: string, attribute?: string): number =>
  list!.find(({ piece }) => piece.kind === kind && (!('attribute' in piece) || piece.attribute === attribute))!.bits;

describe('what speaks for and against', () => {
  it('is in bits of log-odds: four times as many is two bits', () => expect(bits(forFirst, 'prior')).toBeCloseTo(2, 9));
  it('what was seen speaks for what has it, what was claimed against', () => {
    expect(bits(forFirst, 'seen', 'small/a')).toBeGreaterThan(2);
    expect(bits(forFirst, 'claimed', 'small/a')).toBeLessThan(-1);
  });
  it('what both have alike speaks for neither', () => expect(bits(forFirst, 'seen', 'small/b')).toBeCloseTo(0, 9));
  it('for one is against the other', () =>
    expect(bits(forSecond, 'seen', 'small/a')).toBeCloseTo(-bits(forFirst, 'seen', 'small/a'), 9));
  it('the weightiest first', () => {
    const sizes = forFirst!.map((one) => Math.abs(one.bits));
    expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
  });
});
