import { describe, expect, it } from 'vitest';
import { readingOf, saying, short } from './support/reading';

const says = (text: string): string[] => short(saying(text).wordings.filter(({ entry }) => /^says/.test(entry.id)));

describe('sentences that speak of another model', () => {
  it.each(['The Bodrannock does zigzag.', 'Zigzag is what the sister does, the Bodrannock.'])('%s', (text) =>
    expect(says(text).every((claim) => claim.endsWith('(other)'))).toBe(true),
  );

  it('turn back to this thing', () =>
    expect(says('Unlike the Bodrannock, this one is cast iron.')).toEqual(['cast iron']));

  it('a sentence that names both speaks of the one on sale', () =>
    expect(says('The Cressiter, sister of the Bodrannock, is cast iron.')).toEqual(['cast iron']));

  it('the next sentence speaks of this thing again', () =>
    expect(says('The Bodrannock came later. Cast iron all through.')).toEqual(['Cast iron']));

  it('where no model is on sale, no other is another', () =>
    expect(short(readingOf({ title: 'Sewing machine', description: 'Not a Bodrannock. Zigzag.' }).wordings)).toContain(
      'Zigzag',
    ));
});
