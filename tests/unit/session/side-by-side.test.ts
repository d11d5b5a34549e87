import { describe, expect, it } from 'vitest';
import { besideOf, rowsBeside } from '../../../src/session/side-by-side';
import { sampleLikely } from '../view/sample';

const follows = (attribute: string, text: string, usually = false) => ({
  ...{ attribute, name: attribute, text, usually, source: null },
});
const other = sampleLikely({
  ...{ model: 'club/alloy', label: 'Full size, aluminium', probability: 0.15 },
  follows: [follows('club/bobbin', 'round'), follows('club/frame', 'cast iron'), follows('club/stitch', 'zigzag')],
});
const none = sampleLikely({ model: null, kind: 'none', label: 'none', probability: 0.05, follows: [] });

describe('candidates side by side', () => {
  it('are two or three of which something is known, and none where there is nothing to compare', () => {
    expect(besideOf([sampleLikely(), none, other])).toEqual([sampleLikely(), other]);
    expect(besideOf([sampleLikely(), other, other, other])).toHaveLength(3);
    for (const few of [
      [],
      [sampleLikely()],
      [sampleLikely(), none],
      [sampleLikely(), { ...other, probability: 0.001 }],
    ])
      expect(besideOf(few)).toEqual([]);
  });

  it('have what differs first, then what is the same', () => {
    const rows = rowsBeside([sampleLikely(), other]);
    expect(rows.map(({ name, differs }) => [name, differs])).toEqual([
      ['bobbin', true],
      ['weight', true],
      ['club/stitch', true],
      ['frame', false],
    ]);
    expect(rows[2]?.each[0]).toEqual([]);
  });

  it('keep all that may be so of one of them, as where years decide', () => {
    const early = [follows('club/bobbin', 'long, made until 1950'), follows('club/bobbin', 'round, made from 1951')];
    const [bobbin] = rowsBeside([{ ...other, follows: early }, other]);
    expect(bobbin?.each[0]).toHaveLength(2);
    expect(bobbin?.differs).toBe(true);
  });
});
