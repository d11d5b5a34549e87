import { describe, expect, it } from 'vitest';
import { saying, short } from './support/reading';

const places = (text: string): string[] => short(saying(text).places);

describe('where the advert says it was made', () => {
  it.each([
    ['Made at Brindfold.', 'Made at Brindfold'],
    ['Made in Harrowslade.', 'Made in Harrowslade'],
    ['From the Brindfold works.', 'Brindfold works'],
    ['Not made at Brindfold.', 'made at Brindfold (denies)'],
  ])('%s', (text, expected) => expect(places(text)).toEqual([expected]));

  it('of two places the one denied is denied', () =>
    expect(places('Made in Brindfold not Harrowslade.')).toContain('Made in Brindfold not Harrowslade (denies)'));

  it.each([
    'The company had a works at Harrowslade.',
    'They made these at Harrowslade.',
    'The works at Harrowslade made iron ones before.',
    'Grew up two streets from the Brindfold works.',
    "L'usine de Harrowslade n'existe plus.",
  ])('of the firm or of people: %s', (text) => expect(places(text)).toEqual([]));

  it.each(['The leaflet shows the works at Harrowslade.', 'Der alte Prospekt zeigt das Werk Harrowslade.'])(
    'told of by papers: %s',
    (text) => expect(places(text)).toEqual([]),
  );

  it.each(['Bis 1929 war das Werk in Harrowslade.', 'Vor 1929 wurde in Harrowslade gebaut.'])(
    'of the works: %s',
    (text) => expect(places(text)).toEqual([]),
  );
  it('from the works', () =>
    expect(places('Aus dem Werk Harrowslade.')).toEqual(['aus dem Werk Harrowslade'.replace('a', 'A')]));

  it.each(['Collect from Brindfold.', 'I live in Brindfold.', 'Made in Thornmoor.', 'Brindfold. Made with care.'])(
    'not in: %s',
    (text) => expect(places(text)).toEqual([]),
  );
});
