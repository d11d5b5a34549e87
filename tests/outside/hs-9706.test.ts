import { describe, expect, it } from 'vitest';
import { audit, compile } from '../../src/engine';
import { readDraft } from '../../src/listing/draft';
import { packOf } from '../corpus/packs';

/**
 * Harmonized Commodity Description and Coding System (World Customs Organization), chapter 97, from memory: heading 97.06,
 * "Antiques of an age exceeding 100 years". The heading asks for an age only: articles restored or mended, of whatever
 * rarity or price, are in it as long as they keep their character.
 */
const EXCEEDING = 100;
const trade = packOf('src/pack/shipped/trade.json');

/** Invented: one model, each number dated by its run. Numbers A 0001 to 0003 of the years around the age of 100. */
const dated = packOf('fixtures/packs/grindlewade-circle.json');
const YEAR = 2026;
const years = [YEAR - EXCEEDING - 40, YEAR - EXCEEDING - 5, YEAR - EXCEEDING, YEAR - EXCEEDING + 1, YEAR - 70];
const knowledge = compile([
  trade,
  {
    ...dated,
    models: [{ id: 'm', label: 'Ottermere M', names: ['Ottermere M'], maker: 'Ottermere' }],
    families: [],
    prices: {},
    cautions: [],
    wording: [],
    serials: {
      schemes: [{ id: 'a', maker: 'Ottermere', prefix: 'A', digits: 4 }],
      runs: {
        scheme: years.map(() => 'a'),
        first: years.map((_, i) => `A${1000 * (i + 1)}`),
        last: years.map((_, i) => `A${1000 * (i + 1) + 99}`),
        models: years.map(() => ['m']),
        year: years,
      },
    },
  },
]);

/** What is said of "antique" for a machine whose number was allotted in that year. */
function antique(allotted: number, word: string, language: string): string[] {
  const serialText = `A${1000 * (years.indexOf(allotted) + 1)}`;
  const draft = { title: `Ottermere M sewing machine, ${word}`, serialText, language, description: '' };
  return audit(readDraft(draft), knowledge, { asOf: `${YEAR}-11-25` })
    .findings.filter(({ check }) => check === 'age-words')
    .map(({ standing }) => standing);
}

describe('antique, by heading 97.06', () => {
  const wording = trade.wording?.find(({ id }) => id === 'antique');

  it('means an age of over 100 years, and the entry names the heading', () => {
    expect(wording?.means).toEqual({ ageAtLeast: EXCEEDING });
    expect(JSON.stringify(trade.about.sources?.[wording?.source ?? ''])).toMatch(/9706.*exceeding one hundred years/);
  });

  it.each(['antique', 'genuine antique'])('"%s" of one that exceeds it agrees', (word) =>
    expect(antique(YEAR - EXCEEDING - 40, word, 'en')).toEqual(['agrees']),
  );

  it('"exceeding": the hundredth year itself is not surely over, nor surely under it', () => {
    expect(antique(YEAR - EXCEEDING, 'antique', 'en')).toEqual([]);
    // A block lasted some years: allotted 105 years ago, made 101 to 105 years ago.
    expect(antique(YEAR - EXCEEDING - 5, 'antique', 'en')).toEqual(['agrees']);
  });

  it.each([YEAR - EXCEEDING + 1, YEAR - 70])(
    'of one allotted in %d it is minded, for adverts use the word loosely',
    (year) => expect(antique(year, 'antique', 'en')).toEqual(['caution']),
  );

  it.each([
    ['antike Nähmaschine', 'de'],
    ['antique', 'fr'],
  ])('in other languages as well: %s', (word, language) => {
    expect(antique(YEAR - 70, word, language)).toEqual(['caution']);
    expect(antique(YEAR - EXCEEDING - 40, word, language)).toEqual(['agrees']);
  });
});
