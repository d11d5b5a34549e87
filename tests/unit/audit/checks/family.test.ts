import { describe, expect, it } from 'vitest';
import { findingsOf, found } from '../support/demo';

/** Every Fildercott is three-quarter size, cast iron and flat-bed. */
const check = (description: string): string[] =>
  found('family', { title: 'Grindlewade Fildercott sewing machine', description, language: 'en' });

describe('what every member of the named family must be', () => {
  it('what isn’t so can’t be one', () => {
    expect(check('Full size machine.')).toEqual(['disproved: Full size machine']);
    const [finding] = findingsOf('family', {
      title: 'Grindlewade Fildercott sewing machine',
      description: 'Full size machine.',
      language: 'en',
    });
    expect(finding).toMatchObject({ attribute: 'size', known: [{ pack: 'grindlewade-circle' }] });
    expect(finding?.known[0]?.source).toMatch(/./);
  });

  it('what is so agrees', () => expect(check('A 3/4 size machine.')).toEqual(['agrees: 3/4 size']));

  it.each([
    'Not a full size machine, of course.',
    'My other one is a full size machine.',
    'I think it is a full size machine.',
    'I also have a free arm machine.',
  ])('is not held against it: %s', (text) =>
    expect(check(text).filter((line) => !line.startsWith('agrees'))).toEqual([]),
  );

  it('of a family that isn’t named nothing must be so', () =>
    expect(found('family', { title: 'Full size sewing machine', description: '', language: 'en' })).toEqual([]));
});
