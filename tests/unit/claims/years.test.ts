import { describe, expect, it } from 'vitest';
import type { Draft } from '../../../src/listing/types';
import { readingOf } from './support/reading';

const kinds = (draft: Draft): string[] =>
  readingOf(draft).years.map(({ kind, from, to }) => `${kind} ${from === to ? from : `${from}-${to}`}`);
const inText = (description: string, language = 'en'): string[] =>
  kinds({ title: 'Sewing machine', description, language });

describe('of what kind a year is', () => {
  it.each([
    ['Made in 1954.', 'made 1954'],
    ['A 1954 sewing machine.', 'made 1954'],
    ['Made in the 1950s.', 'made 1950-1959'],
    ['Bought in 1962.', 'bought 1962'],
    ['In the family since 1970.', 'owned 1970'],
    ['Patented 1938.', 'other 1938'],
    ['The motor is dated 1948.', 'other 1948'],
    ['From 1946 on they had lamps.', 'other 1946'],
    ['Motor dated 1948.', 'other 1948'],
    ['From 1946 on they had lamps.', 'other 1946'],
  ])('%s', (text, expected) => expect(inText(text)).toEqual([expected]));

  it.each([
    ['1940s machine in working order.', 'made 1940-1949'],
    ['Year: 1962.', 'made 1962'],
  ])('a year that opens a sentence or a row: %s', (text, expected) => expect(inText(text)).toEqual([expected]));

  it.each([
    'I have two from the 1920s as well.',
    'A list of 1951 is in the lid.',
    'It stood in the museum from 1974 to 2009.',
    'My friend has one from 1958.',
    "Her mother's previous one, from 1911, went for scrap.",
    'Production ended in 1962.',
    'Auf einem Tretgestell von 1912.',
    'They built it until 1962.',
    'Gekauft als Ersatz für eine von 1903.',
    'Im Set mit einer elektrischen Nähmaschine von 1975.',
    'Aus Schulauflösung, Schule Baujahr 1902.',
    'Das Haus, in dem sie stand, ist von 1904.',
    'Der Sohn vom Schneider, Bj. 1938, hat sie mir gezeigt.',
    'Nach dem Brand 1929 wurde die Werkstatt neu gebaut.',
    'Vor 1945 wurde in Vessingrode gebaut.',
  ])('of something else: %s', (text) => expect(inText(text).filter((year) => year.startsWith('made'))).toEqual([]));

  it.each([
    'Nähmaschine Baujahr 1935.',
    'Gut erhalten, Baujahr 1935.',
    'Das ist eine von 1935.',
    '1935 wurde die Maschine gebaut.',
    'Die Maschine, die hier steht, ist von 1935.',
    'Das gute Stück ist 1935 gebaut.',
  ])('of the thing: %s', (text) => expect(inText(text, 'de')).toEqual(['made 1935']));

  it('told of people proves nothing', () => {
    const asides = (text: string): unknown[] =>
      readingOf({ title: 'Sewing machine', description: text }).years.map(({ aside }) => aside);
    expect(asides('My mum made my christening gown on this in 1964.')).toEqual([true]);
    expect(asides('It was made in 1954.')).toEqual([undefined]);
    expect(asides('I am selling a machine made in 1954.')).toEqual([undefined]);
  });

  it('a bare year in a title is the year made', () =>
    expect(kinds({ title: 'Cressiter 1955', description: '' })).toEqual(['made 1955']));

  it.each([
    'Great for 1950 reenactment.',
    'Number 1954 in my book.',
    'The firm dates from 1884.',
    'The company was founded in 1884.',
  ])('claims nothing of the machine: %s', (text) =>
    expect(inText(text).filter((year) => year.startsWith('made'))).toEqual([]),
  );
});

describe('a year that nothing but its place calls the year made', () => {
  it.each([
    ['en', 'Sewing machine, 1955.', 'made 1955'],
    ['en', 'A lovely old sewing machine, circa 1955.', 'made 1955'],
    ['de', 'Nähmaschine, um 1955.', 'made 1955'],
    ['fr', 'Machine à coudre, 1955.', 'made 1955'],
    ['en', 'Oak table, 1955.', 'unknown 1955'],
    ['en', 'Sewing machine by the window, 1955.', 'unknown 1955'],
  ])('bare, behind a name (%s): %s', (language, text, expected) => expect(inText(text, language)).toEqual([expected]));

  it.each([
    ['Built during the war, in 1942.', 'made 1942'],
    ['Sold during the war, in 1942.', 'unknown 1942'],
    ['The year is 1948.', 'made 1948'],
    ['Year 1948.', 'made 1948'],
    ['The last year 1948.', 'unknown 1948'],
    ['The number says 1954.', 'made 1954'],
    ['The label says 1954.', 'unknown 1954'],
  ])('behind what it belongs to, or a label: %s', (text, expected) => expect(inText(text)).toEqual([expected]));
});

describe('of what a sentence speaks', () => {
  it.each([
    ['en', 'The table, which is from 1960, is light.', 'other 1960'],
    ['en', 'The machine, which is from 1960, is light.', 'made 1960'],
    ['fr', 'Le meuble, qui est de 1960, est léger.', 'other 1960'],
    ['en', 'The table is light, folding, from the seventies.', 'other 1970-1979'],
    ['en', 'The machine is light, sturdy, from the seventies.', 'made 1970-1979'],
    ['fr', 'La table est pliante, de 1960.', 'other 1960'],
    ['de', 'Der Motor stammt aus 1955.', 'other 1955'],
    ['de', 'Sie stammt aus 1955.', 'made 1955'],
    ['de', 'Die von 1968 sehen anders aus.', 'other 1968'],
    ['en', 'The number dates it to 1936.', 'made 1936'],
    ['en', 'The serial is from 1936.', 'made 1936'],
    ['en', 'The drawer is from 1936.', 'other 1936'],
    ['en', 'She used it from 1962.', 'owned 1962'],
    ['fr', "Sortie d'usine en 1952.", 'made 1952'],
    ['fr', 'Datant de 1952, elle coud.', 'made 1952'],
    ['fr', "Sortie de l'usine en 1952.", 'made 1952'],
    ['en', 'The catalogue number is from 1936.', 'other 1936'],
    ['fr', "L'usine date de 1952.", 'other 1952'],
    ['fr', "La production s'est arrêtée en 1962.", 'other 1962'],
    ['fr', "Le pédalier vient de l'ancienne machine de 1912.", 'other 1912'],
    ['fr', 'Année inscrite sur le socle : 1961.', 'unknown 1961'],
    ['fr', 'La production sest arretee en 1962.', 'other 1962'],
  ])('its year is of that (%s): %s', (language, text, expected) => expect(inText(text, language)).toEqual([expected]));
});
