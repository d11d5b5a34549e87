import { describe, expect, it } from 'vitest';
import type { Draft } from '../../../src/listing/types';
import { readingOf } from './support/reading';

const kinds = (draft: Draft): string[] =>
  readingOf(draft).years.map(({ kind, from, to }) => `${kind} ${from === to ? from : `${from}-${to}`}`);
const inText = (description: string): string[] => kinds({ title: 'Sewing machine', description });

describe('of what kind a year is', () => {
  it.each([
    ['Made in 1954.', 'made 1954'],
    ['A 1954 sewing machine.', 'made 1954'],
    ['Made in the 1950s.', 'made 1950-1959'],
    ['Bought in 1962.', 'bought 1962'],
    ['In the family since 1970.', 'owned 1970'],
    ['Patented 1938.', 'other 1938'],
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
  ])('of something else: %s', (text) => expect(inText(text).filter((year) => year.startsWith('made'))).toEqual([]));

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
