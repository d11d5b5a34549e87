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

  it.each([
    ['Heavier than my Bodrannock with zigzag.', 'zigzag (other)'],
    ['Heavier than my Bodrannock, it does zigzag.', 'zigzag'],
    ['Heavier than my Bodrannock. With zigzag.', 'zigzag'],
    ['With zigzag, heavier than my Bodrannock.', 'zigzag'],
  ])('behind a comparison, what the other has: %s', (text, expected) => expect(says(text)).toEqual([expected]));

  it('in French too', () =>
    expect(
      short(
        readingOf({
          title: 'Grindlewade Cressiter',
          description: 'Plus lourde que ma Bodrannock avec zigzag.',
          language: 'fr',
        }).wordings,
      ),
    ).toEqual(['zigzag (other)']));

  it('where no model is on sale, no other is another', () =>
    expect(short(readingOf({ title: 'Sewing machine', description: 'Not a Bodrannock. Zigzag.' }).wordings)).toContain(
      'Zigzag',
    ));
});
