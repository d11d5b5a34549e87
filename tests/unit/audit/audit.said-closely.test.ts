import { describe, expect, it } from 'vitest';
import { auditOf, cressiter, found } from './support/demo';

// Sentences that were once misread: what they accuse, and what they don't.

describe('weights', () => {
  it.each([
    ['It is alloy, which is why it is only 7 kg.', ['disproved: 7 kg']],
    ['Easy to carry at 6 kg.', ['disproved: 6 kg']],
    ['18 kg without any case.', ['disproved: 18 kg']],
    ['The treadle table, iron legs, 30 kg, is sold.', []],
    ['Treadle table, iron legs, oak top, weighs 28 kg.', []],
  ])('%s', (words, expected) => expect(found('weight', cressiter(words))).toEqual(expected));
});

describe('names', () => {
  it('“also called” is a name of the thing', () =>
    expect(found('name-name', cressiter('This Cressiter, also called the Wendelow, runs.'))[0]).toMatch(/^disproved/));

  it('the name of a cabinet is none', () =>
    expect(found('name-name', { title: 'Ulversholt Q 21 in a Grindlewade cabinet', language: 'en' })).toEqual([]));

  it('of mine, it is another', () =>
    expect(found('name-name', cressiter('My own Wendelow is alloy.')).filter((one) => /^disproved/.test(one))).toEqual(
      [],
    ));
});

describe('what a comparison at the end of a sentence leaves to this thing', () => {
  it.each(['Alloy, lighter than my Wendelow.', 'Has a free arm, and is smaller than the Wendelow.'])('%s', (words) =>
    expect(
      auditOf(cressiter(words)).findings.some(
        ({ standing, check }) => standing === 'disproved' && (check === 'claim-fact' || check === 'family'),
      ),
    ).toBe(true),
  );

  it('but not what is said of the other behind its name', () =>
    expect(found('claim-fact', cressiter('Not to be confused with the Wendelow, which is alloy.'))).toEqual([]));
});

describe('years and ages', () => {
  const older = { title: 'Grindlewade Quarrendle, 150 years old', language: 'en' };

  it('150 years old is said of the thing', () =>
    expect(found('age-words', older)).toEqual(['disproved: 150 years old']));
  it('patents, and papers of this century, are not', () => {
    const numbered = (words: string) => cressiter(words, { serialText: 'KD 372118' });
    expect(found('serial-year', numbered('Patent dates run from 1879 to 1888.'))).toEqual([]);
    expect(found('serial-year', numbered('Its test label says made in 2022.'))).toEqual([]);
  });
});

describe('what is denied beside what is said of the same', () =>
  it('goes along with it', () =>
    expect(
      found('claim-fact', {
        title: 'Ulversholt Q 41',
        description: 'Straight stitch only, no zigzag.',
        language: 'en',
      }),
    ).toEqual(['disproved: Straight stitch only | no zigzag'])));
