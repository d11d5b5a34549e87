import { describe, expect, it } from 'vitest';
import { findYears } from '../../../src/quantity/years';

describe('findYears: which years', () => {
  it.each<[text: string, from: number, to: number, quote: string]>([
    ['1954', 1954, 1954, '1954'],
    ['1940s', 1940, 1949, '1940s'],
    ["1940's", 1940, 1949, "1940's"],
    ['40s style', 1940, 1949, '40s'],
    ["'50s machine", 1950, 1959, "'50s"],
    ['fifties', 1950, 1959, 'fifties'],
    ['nineteen-fifties', 1950, 1959, 'nineteen-fifties'],
    ['50er Jahre', 1950, 1959, '50er Jahre'],
    ['aus den 50ern', 1950, 1959, '50ern'],
    ['50er/60er Jahre', 1950, 1969, '50er/60er Jahre'],
    ['fünfziger Jahre', 1950, 1959, 'fünfziger Jahre'],
    ['aus den Fünfzigern', 1950, 1959, 'Fünfzigern'],
    ['aus den Zwanzigern', 1920, 1929, 'Zwanzigern'],
    ['années 50', 1950, 1959, 'années 50'],
    ['années 1950', 1950, 1959, 'années 1950'],
    ['années cinquante', 1950, 1959, 'années cinquante'],
    ['early 1920s', 1920, 1923, 'early 1920s'],
    ['mid-1920s', 1924, 1926, 'mid-1920s'],
    ['late 1920s', 1927, 1929, 'late 1920s'],
    ['early to mid 1950s', 1950, 1956, 'early to mid 1950s'],
    ['Ende der 50er Jahre', 1957, 1959, 'Ende der 50er Jahre'],
    ['début des années 50', 1950, 1953, 'début des années 50'],
    ['1947-49', 1947, 1949, '1947-49'],
    ['1947/8', 1947, 1948, '1947/8'],
    ['1947 – 1953', 1947, 1953, '1947 – 1953'],
    ['1947 to 1953', 1947, 1953, '1947 to 1953'],
    ['between 1947 and 1953', 1947, 1953, '1947 and 1953'],
    ['1947 bis 1953', 1947, 1953, '1947 bis 1953'],
    ['1920/30s', 1920, 1939, '1920/30s'],
    ['début du XXe siècle', 1900, 1933, 'début du XXe siècle'],
    ['1930s/40s', 1930, 1949, '1930s/40s'],
    ['late 1940s or early 1950s', 1947, 1953, 'late 1940s or early 1950s'],
    ['turn of the century', 1890, 1910, 'turn of the century'],
    ['19th century', 1800, 1899, '19th century'],
    ['early 1900s', 1900, 1933, 'early 1900s'],
    ['before 1950', 1500, 1949, 'before 1950'],
    ['after 1945', 1946, 2100, 'after 1945'],
    ['1954 onwards', 1954, 2100, '1954 onwards'],
    ['12.05.1954', 1954, 1954, '1954'],
    ['5/1954', 1954, 1954, '1954'],
  ])('%j', (text, from, to, quote) => {
    expect(findYears(text)).toMatchObject([{ from, to, quote }]);
  });

  it.each([
    'circa 1938',
    'c1938',
    'c. 1938',
    'ca. 1938',
    'um 1938',
    'vers 1938',
    'about 1938',
    '1938?',
    '1938 or so',
    '1938ish',
  ])('%j is approximate', (text) => {
    expect(findYears(text)).toMatchObject([{ from: 1938, to: 1938, approximate: true }]);
  });

  it('is exact without such a word', () => {
    expect(findYears('made in 1938')[0]?.approximate).toBe(false);
  });
});

describe('findYears: what is no year', () => {
  it.each([
    '£1954',
    'only 2000 built',
    'one of only 1954 made',
    '1954 €',
    '1950 ono',
    'asking 1950',
    'model 1954',
    'class 1600',
    'no. 1954',
    'serial no 1954',
    'K1954',
    '1954K',
    '1954-K',
    '1954-12345',
    '2000 stitches per minute',
    '2000 mm',
    '1500 rpm',
    '1,954',
    '1954.50',
    'call 01234 1954 200',
    'in her late 60s',
    '80er Nadel',
    '1499 and 2101',
    '19545',
  ])('%j', (text) => {
    expect(findYears(text)).toEqual([]);
  });
});

describe('findYears: of what', () => {
  it.each<[text: string, kind: string, cue: string | null]>([
    ['made in 1954', 'made', 'made in'],
    ['It was built around 1954', 'made', 'built'],
    ['Manufactured 1947-49', 'made', 'Manufactured'],
    ['dates from 1954', 'made', 'dates from'],
    ['a machine from 1954', 'made', 'from'],
    ['a lovely 1954 machine', 'made', 'machine'],
    ['vintage 1954', 'made', 'vintage'],
    ['Baujahr 1954', 'made', 'Baujahr'],
    ['Baujahr: ca. 1954', 'made', 'Baujahr'],
    ['1954 gebaut', 'made', 'gebaut'],
    ['fabriquée en 1954', 'made', 'fabriquée'],
    ['aus dem Jahr 1954', 'made', 'aus'],
    ['datant des années 50', 'made', 'datant'],
    ['built (1954)', 'made', 'built'],
    ['the number says 1954', 'made', 'number says'],
    ['the label says 1954', 'unknown', null],
    ['number is from 1954', 'made', 'number is from'],
    ['die Nummer gehört zu 1954', 'made', 'Nummer gehört zu'],
    ['le numéro indique 1954', 'made', 'numéro indique'],
    ["sortie d'usine en 1954", 'made', "sortie d'usine"],
    ['sortie en 1954', 'launched', 'sortie'],
    ["d'époque 1954", 'made', "d'époque"],
    ['launched in 1947', 'launched', 'launched'],
    ['the works built these from 1947', 'launched', 'built these'],
    ['bought new in 1961, the year it was made', 'made', 'year it was made'],
    ["it's the 1975 version with a lamp", 'made', 'version'],
    ['this model came out in 1947', 'launched', 'came out'],
    ['first sold in 1947', 'launched', 'first sold in'],
    ['1947 eingeführt', 'launched', 'eingeführt'],
    ['bought new in 1962', 'bought', 'bought new'],
    ['purchased 1962', 'bought', 'purchased'],
    ['got it in 1962', 'bought', 'got it in'],
    ['1962 von meiner Mutter gekauft', 'bought', 'gekauft'],
    ['achetée en 1962', 'bought', 'achetée'],
    ['owned since 1970', 'owned', 'owned since'],
    ['owned from 1970', 'owned', 'owned'],
    ['used it from 1970', 'owned', 'used it from'],
    ['had it from 1970', 'owned', 'had it from'],
    ["my mother's since 1970", 'owned', 'since'],
    ['in the family since 1970', 'owned', 'since'],
    ['last used in 1998', 'owned', 'last used'],
    ['seit 1970 im Besitz', 'owned', 'seit'],
    ['patent 1948', 'other', 'patent'],
    ['Pat. 1948', 'other', 'Pat'],
    ['casting mark 1949', 'other', 'casting mark'],
    ['manual dated 1955', 'other', 'manual'],
    ['the original 1954 manual', 'other', 'manual'],
    ['receipt from 1962', 'other', 'receipt'],
    ['she was born in 1930', 'other', 'born in'],
    ['serviced in 2019', 'other', 'serviced'],
    ['© 2023', 'other', '©'],
    ['geb. 1930', 'other', 'geb'],
    ['motor fitted in 1955', 'other', 'fitted'],
    ['Bj. 1954', 'made', 'Bj'],
    ['achat en 1955', 'bought', 'achat'],
    ['1954', 'unknown', null],
    ['Tarn 3 (1954)', 'unknown', null],
    ['built-in light, 1954', 'unknown', null],
  ])('%j is %s', (text, kind, cue) => {
    expect(findYears(text)).toMatchObject([{ kind, cue }]);
  });

  it('gives each year its own word', () => {
    const kinds = (text: string) => findYears(text).map(({ from, kind }) => `${from} ${kind}`);
    expect(kinds('Made in 1954 bought in 1960')).toEqual(['1954 made', '1960 bought']);
    expect(kinds('introduced in 1948, this one made 1954')).toEqual(['1948 launched', '1954 made']);
    expect(kinds('1950 gebaut und 1954 gekauft')).toEqual(['1950 made', '1954 bought']);
    expect(kinds('Bought 1962, a 1954 machine')).toEqual(['1962 bought', '1954 made']);
    expect(kinds('My mother bought it in 1962. Manual 1958.')).toEqual(['1962 bought', '1958 other']);
  });
});
