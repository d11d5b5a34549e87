import { describe, expect, it } from 'vitest';
import { cressiter, findingsOf, found } from '../support/demo';

/** KD372118 was allotted in 1955. */
const check = (text: string): string[] => found('serial-year', cressiter(`${text} Serial number KD372118.`));

describe('was the serial allotted when the advert says it was made?', () => {
  it('made before the allotment it can’t be', () =>
    expect(check('Made in 1951.')).toEqual(['disproved: 1951 | KD372118']));

  it('long after the allotment neither', () => expect(check('Made in 1961.')).toEqual(['disproved: 1961 | KD372118']));

  it.each(['Made in 1955.', 'Made in 1957.', 'Made c. 1952.', 'Made in the 1950s.'])('agrees: %s', (text) => {
    expect(check(text)).toHaveLength(1);
    expect(check(text)[0]).toMatch(/^agrees: .*KD372118$/);
  });

  it.each([
    'Bought in 1962.',
    'In the family since 1970.',
    'The Cressiter was launched in 1949.',
    'Patented 1938.',
    'It may be made in 1951.',
  ])('is not held against it: %s', (text) => expect(check(text)).toEqual([]));
});

describe('two years', () => {
  it.each(['Made in 1961. A lovely machine from 1955.', 'Made in 1961, 1955.', 'Made in 1961. Made in the 1950s.'])(
    'of which one fits are a question: %s',
    (text) => {
      expect(check(text)).toEqual(['unproved: 1961 | KD372118']);
      const [asked] = findingsOf('serial-year', cressiter(`${text} Serial number KD372118.`));
      expect(asked!.text).toMatch(/names “1961” and “1955”|names “1961” and “1950s”/);
      expect(asked!.ask).not.toBeNull();
    },
  );

  it.each([
    'Made in 1961. It was bought in 1955.',
    'Made in 1961. Made before 1960.',
    'Made in 1961. My other one was made in 1955.',
    'Made in 1961. Not made in 1955.',
    'Made in 1961. Mended in 1963.',
  ])('of which none is the machine’s and fits are not: %s', (text) =>
    expect(check(text)).toEqual(['disproved: 1961 | KD372118']),
  );
});
