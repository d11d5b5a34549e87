import { describe, expect, it } from 'vitest';
import { cressiter, found } from '../support/demo';

/** About 410,000 Cressiters were made. */
const check = (text: string): string[] => found('rarity', cressiter(text));

describe('rare, of one made by the hundred thousand', () => {
  it('is a word to weigh', () => expect(check('A rare machine.')).toEqual(['caution: rare']));
  it('is wrong where the advert gives a number', () =>
    expect(check('Only 200 ever made.')).toEqual(['disproved: Only 200 ever made']));

  it.each([
    'In a rare colour.',
    'Not rare.',
    'Not rare, but nice.',
    'My other machine is rare.',
    'Some sellers call it rare.',
    'One of 3 in my workroom.',
    'About 400,000 were made.',
  ])('is not held against it: %s', (text) => expect(check(text)).toEqual([]));

  it('may be right of a rarer one', () =>
    expect(
      found('rarity', {
        title: 'Grindlewade Fildercott Junior',
        description: 'A rare machine, only 15,000 ever made.',
        language: 'en',
      }),
    ).toEqual([]));
});
