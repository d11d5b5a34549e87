import { describe, expect, it } from 'vitest';
import { STOCK_YEARS, yearsAgree, yearsBesides, yearsClaimed, yearsDisagree } from '../../../src/audit/years';
import type { Run } from '../../../src/pack/serials/run';
import { readingOf } from '../claims/support/reading';

const reading = (description: string) => readingOf({ title: 'Sewing machine', description });
const run = (year: number | null): Run => ({ year }) as Run;

describe('years made against the year of an allotment', () => {
  it.each([
    [1955, 'agree'],
    [1955 + STOCK_YEARS, 'agree'],
    [1955 + STOCK_YEARS + 1, 'disagree'],
    [1954, 'disagree'],
  ])('made in %i, allotted in 1955: %s', (year, expected) => {
    const said = reading(`Made in ${year}.`);
    expect(yearsAgree([run(1955)], said)).toHaveLength(expected === 'agree' ? 1 : 0);
    expect(yearsDisagree([run(1955)], said)).toHaveLength(expected === 'disagree' ? 1 : 0);
  });

  it('circa allows five years', () => {
    expect(yearsDisagree([run(1955)], reading('Made circa 1950.'))).toEqual([]);
    expect(yearsDisagree([run(1955)], reading('Made circa 1949.'))).toHaveLength(1);
  });

  it('one run of several that fits, or has no year, is enough', () => {
    const said = reading('Made in 1950.');
    expect(yearsDisagree([run(1955), run(1950)], said)).toEqual([]);
    expect(yearsDisagree([run(1955), run(null)], said)).toEqual([]);
    expect(yearsDisagree([], said)).toEqual([]);
  });

  it.each(['Bought in 1950.', 'Not made in 1950.', 'It may be made in 1950.', 'My other machine was made in 1950.'])(
    'not claimed: %s',
    (text) => expect(yearsClaimed(reading(text))).toEqual([]),
  );
});

describe('years beside one that doesn’t fit', () => {
  const besides = (text: string): string[] =>
    yearsBesides([run(null), run(1955)], reading(`Made in 1961. ${text}`)).map(({ quote }) => quote);

  it.each([
    ['A machine from 1955.', '1955'],
    ['It went to the fair, 1955.', '1955'],
    ['Made in the 1950s.', '1950s'],
    ['Made about 1950.', 'about 1950'],
    ['Made between 1935 and 1955.', '1935 and 1955'],
  ])('by whatever word, where they fit: %s', (text, quote) => expect(besides(text)).toEqual([quote]));

  it.each([
    'A machine from 1950.',
    'Bought in 1955.',
    'Not made in 1955.',
    'My other machine was made in 1955.',
    'Made before 1960.',
    'Made between 1934 and 1955.',
  ])('not: %s', (text) => expect(besides(text)).toEqual([]));
});
