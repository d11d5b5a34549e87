import { describe, expect, it } from 'vitest';
import { found } from '../support/demo';

const check = (description: string): string[] =>
  found('claim-claim', { title: 'Old sewing machine', description, language: 'en' });

describe('two statements of the advert that exclude each other', () => {
  it.each([
    ['Cast iron body. The alloy body is light.', 'disproved: Cast iron body | alloy body'],
    ['Low shank. Needs high shank feet, high shank it is.', 'disproved: Low shank | high shank'],
    ['Made in 1950. Made in 1961.', 'disproved: 1950 | 1961'],
  ])('%s', (text, expected) =>
    expect(check(text).map((line) => line.split(' | ').slice(0, 2).join(' | '))).toEqual([expected]),
  );

  it.each([
    'Cast iron body. The case is aluminium.',
    'Hand crank and treadle.',
    'Takes a round bobbin, class 15.',
    'Cast iron body, not aluminium.',
    'Cast iron body, I think it is aluminium inside.',
    'Made in 1950. Bought in 1961.',
    'Made c. 1950. Made in 1951.',
    'Treadle machine, without the treadle.',
  ])('both can hold: %s', (text) => expect(check(text)).toEqual([]));

  it('is left to the facts where they decide', () =>
    expect(
      found('claim-claim', {
        title: 'Grindlewade Cressiter sewing machine',
        description: 'Cast iron body. Alloy body.',
        language: 'en',
      }),
    ).toEqual([]));
});
