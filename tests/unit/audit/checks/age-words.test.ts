import { describe, expect, it } from 'vitest';
import { cressiter, found } from '../support/demo';

/** A Cressiter was made from 1949 to 1962; the audits here are of November 2026. */
const check = (text: string): string[] => found('age-words', cressiter(text));

describe('words of age', () => {
  it.each([
    ['An antique machine.', 'caution: antique'],
    ['A Victorian machine.', 'caution: Victorian'],
    ['A pre-war machine.', 'disproved: pre-war'],
    ['Over 100 years old.', 'disproved: Over 100 years old'],
  ])('too old for it: %s', (text, expected) => expect(check(text)).toEqual([expected]));

  it.each([
    'Victorian style decals.',
    'Not an antique.',
    'My great-aunt’s antique cabinet is next to it, another antique.',
    'Over 60 years old.',
    'Over 100 years of experience.',
  ])('is not held against it: %s', (text) =>
    expect(check(text).filter((line) => line.startsWith('disproved'))).toEqual([]),
  );

  it('hold of an old one', () =>
    expect(
      found('age-words', { title: 'Grindlewade Fennicote', description: 'An antique machine.', language: 'en' }),
    ).toEqual(['agrees: antique']));

  it('where the model was made for long, nothing is sure', () =>
    expect(
      found('age-words', { title: 'Grindlewade Quarrendle', description: 'A Victorian machine.', language: 'en' }),
    ).toEqual([]));
});

it.each(['It came with our house, which is Victorian.', 'The table is Victorian.'])('of something else: %s', (text) =>
  expect(check(text)).toEqual([]),
);

it('a word said in several places is one finding, with every place', () =>
  expect(
    found('age-words', { title: 'Antique Grindlewade Cressiter', description: 'An antique machine.', language: 'en' }),
  ).toEqual(['caution: Antique | antique']));

describe('years without a serial', () => {
  it.each([
    ['Made in 1935.', 'disproved: 1935'],
    ['Made in 1970.', 'disproved: 1970'],
  ])('outside the years of the model: %s', (text, expected) => expect(check(text)).toEqual([expected]));
  it.each(['Made in 1955.', 'Made c. 1945.', 'Bought in 1970.', 'Launched in 1935.'])('may be: %s', (text) =>
    expect(check(text)).toEqual([]),
  );
  it('are another check’s where the serial dates it', () =>
    expect(check('Made in 1935. Serial number KD372118.')).toEqual([]));
});
