import { describe, expect, it } from 'vitest';
import { commonFollows, likelyAdds } from '../../../src/view/likely';
import { sampleAudit, sampleLikely } from './sample';

const follows = (attribute: string, text: string, usually = false) => ({
  ...{ attribute, name: attribute, text, usually, source: null },
});
const other = sampleLikely({
  ...{ model: 'club/alloy', label: 'Full size, aluminium', probability: 0.15 },
  follows: [follows('club/bobbin', 'round'), follows('club/frame', 'cast iron'), follows('club/stitch', 'zigzag')],
});
const none = sampleLikely({ model: null, kind: 'none', label: 'none', probability: 0.05, follows: [] });

describe('what follows whichever it is', () => {
  it('is what all candidates share that aren’t improbable', () => {
    expect(commonFollows([sampleLikely(), other, none]).map(({ name }) => name)).toEqual(['frame']);
    expect(commonFollows([sampleLikely(), { ...other, probability: 0.01 }])).toHaveLength(3);
  });

  it('is usual where it is only usual for one of them', () => {
    const usual = { ...other, follows: [follows('club/frame', 'cast iron', true)] };
    expect(commonFollows([sampleLikely(), usual])[0]?.usually).toBe(true);
  });
});

describe('what it most likely is', () => {
  it('is shown of a thing on sale, where there is something to say', () => {
    expect(likelyAdds(sampleAudit({ likely: [sampleLikely()] }), 0)).toBe(true);
    expect(likelyAdds(sampleAudit({ likely: [] }), 3)).toBe(false);
    expect(likelyAdds(sampleAudit({ kind: 'part', likely: [sampleLikely()] }), 0)).toBe(false);
  });

  it('is not shown where it is none and nobody has looked', () => {
    expect(likelyAdds(sampleAudit({ likely: [none] }), 0)).toBe(false);
    expect(likelyAdds(sampleAudit({ likely: [none] }), 1)).toBe(true);
  });
});
