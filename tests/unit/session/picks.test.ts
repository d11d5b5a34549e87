import { describe, expect, it } from 'vitest';
import type { Pick } from '../../../src/listing/picks';
import { pickAnswer, pickName, picksIn, withoutPicks } from '../../../src/session/picks';

const picks: Pick[] = [
  { how: 'picked', value: '£450.00' },
  { how: 'picked', value: '> a title\nof two lines, as it may be' },
  { how: 'typed', value: '45', was: '£450.00' },
  { how: 'typed', value: '£45', was: '' },
];

describe('how a page is to be read, among the answers', () => {
  it.each(picks)('comes back as it was said: %o', (pick) => {
    const seen = new Map([
      ['trade/frame', 'iron'],
      [pickName('price'), pickAnswer(pick)],
    ]);
    expect(picksIn(seen)).toEqual({ price: pick });
    expect([...withoutPicks(seen)]).toEqual([['trade/frame', 'iron']]);
  });

  it('has typed words in one line, and for a price alone', () => {
    const answer = pickAnswer({ how: 'typed', value: ' 45\n pounds ', was: 'x\ny' });
    expect(picksIn(new Map([[pickName('price'), answer]]))).toEqual({
      price: { how: 'typed', value: '45 pounds', was: 'x\ny' },
    });
    expect(picksIn(new Map([[pickName('title'), answer]]))).toEqual({});
  });

  it('is left out where nobody can have said it', () => {
    for (const answer of [null, true, '', 'x', '>45'])
      expect(picksIn(new Map([[pickName('price'), answer]]))).toEqual({});
    const other = new Map([['read:place', '=Netherholme']]);
    expect(picksIn(other)).toEqual({});
    expect(withoutPicks(other).size).toBe(0);
  });
});
