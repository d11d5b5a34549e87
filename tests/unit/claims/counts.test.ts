import { describe, expect, it } from 'vitest';
import { readingOf, saying } from './support/reading';

const counts = (text: string, language = 'en'): [string, number][] =>
  readingOf({ title: 'Cressiter', description: text, language }).counts.map(({ quote, most }) => [quote, most]);

describe('how many the advert says were made', () => {
  it.each([
    ['Only 200 ever made.', 'en', 'Only 200 ever made', 200],
    ['One of 500.', 'en', 'One of 500', 500],
    ['Only a few hundred were ever made.', 'en', 'Only a few hundred were ever made', 400],
    ['They only made 500 of these.', 'en', 'only made 500', 500],
    ['Fewer than 200 of her kind were ever built.', 'en', 'Fewer than 200 of her kind were ever built', 200],
    ['Nur 80 Exemplare wurden je gebaut.', 'de', 'Nur 80 Exemplare wurden je gebaut', 80],
    ['1 of 200', 'en', '1 of 200', 200],
    ['Fewer than 50 Pelluckets were ever built.', 'en', 'Fewer than 50 Pelluckets were ever built', 50],
    ['Fewer than 1,500 were produced.', 'en', 'Fewer than 1,500 were produced', 1500],
    ['Only 250 of the Wendelow 14 left the works.', 'en', 'Only 250 of the Wendelow 14 left the works', 250],
    [
      'Less than four hundred of these left the factory.',
      'en',
      'Less than four hundred of these left the factory',
      400,
    ],
    ['Just forty of this model.', 'en', 'Just forty of this model', 40],
    ['Nur 300 Stück gebaut.', 'de', 'Nur 300 Stück gebaut', 300],
    ['Limited edition of 500.', 'en', 'Limited edition of 500', 500],
    ['Limitierte Auflage von 80.', 'de', 'Limitierte Auflage von 80', 80],
    ['Only a dozen of these are left in the world.', 'en', 'Only a dozen of these are left in the world', 12],
    ['Weltweit nur noch fünf bekannt.', 'de', 'nur noch fünf bekannt', 5],
    ["Il n'y en a eu que 100 de fabriquées.", 'fr', 'que 100 de fabriquées', 100],
    ['Seulement 40 fabriquees.', 'fr', 'Seulement 40 fabriquees', 40],
    ['Fabriquée à 50 exemplaires seulement.', 'fr', '50 exemplaires seulement', 50],
  ])('%s', (text, language, quote, most) => expect(counts(text, language)).toEqual([[quote, most]]));

  it.each([
    'Only 200 miles on the clock.',
    'Made 200 dresses with it.',
    'One of my machines.',
    'Only three left in the shop.',
    'About 400,000 were made.',
  ])('none in: %s', (text) => expect(counts(text)).toEqual([]));

  it('with what is said of it', () =>
    expect(saying('My other machine is one of 500.').counts[0]).toMatchObject({ subject: 'other' }));
});
