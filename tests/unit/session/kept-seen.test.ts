import { describe, expect, it } from 'vitest';
import { keptSeen, seenFrom } from '../../../src/session/kept-seen';

const at = (second: number) => `2026-06-01T10:00:0${second}.000Z`;

describe('what was seen, as it is kept', () => {
  it('comes back as it was said, in that order', () => {
    const kept = [
      keptSeen('x', 'p/drop-feed', false, at(3)),
      keptSeen('x', 'p/bobbin', 'long', at(1)),
      keptSeen('x', 'p/shank', null, at(2)),
    ];
    expect([...seenFrom(kept)]).toEqual([
      ['p/bobbin', 'long'],
      ['p/shank', null],
      ['p/drop-feed', false],
    ]);
  });

  it('is left out where it can’t be what somebody said', () => {
    const kept = ['{"a":1}', '[1]', '12', 'long', ''].map((answer, i) => ({
      ...{ about: 'x', attribute: `p/${i}`, answer, at: at(1) },
    }));
    expect(seenFrom(kept).size).toBe(0);
  });
});
