import { describe, expect, it } from 'vitest';
import { cressiter, found } from '../support/demo';

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
