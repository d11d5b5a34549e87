import { describe, expect, it } from 'vitest';
import { readingOf } from './support/reading';

const ages = (text: string, language = 'en'): number[] =>
  readingOf({ title: 'Cressiter', description: text, language }).ages.map((age) => age.atLeast);

describe('ages that the advert gives the thing', () => {
  it.each([
    ['Over 100 years old.', 'en', 100],
    ['More than a hundred years old.', 'en', 100],
    ['Über 100 Jahre alt.', 'de', 100],
    ['Plus de 120 ans.', 'fr', 120],
  ])('%s', (text, language, age) => expect(ages(text, language)).toEqual([age]));

  it.each([
    'Nearly 70 years old.',
    'Over 40 years of experience.',
    'In the family for over 30 years.',
    'Over 20 years ago.',
    'Over 100 machines sold.',
  ])('none in: %s', (text) => expect(ages(text)).toEqual([]));
});
