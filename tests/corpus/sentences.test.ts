import { describe, expect, it } from 'vitest';
import { demoKnowledge } from './labelled';
import { accused, foundOut, LANGUAGES, type Language, sentences } from './sentences';

/** Read wrongly so far. */
const ACCUSED: Record<Language, readonly string[]> = {
  en: [
    'Our shop: Antiques & Industrial Salvage, Harrowslade Road',
    'Prewar quality in a postwar machine.',
    "Side loading is a pain, this isn't.",
    'zigzag industrial free arm treadle hand crank vintage antique',
  ],
  de: [],
  fr: [
    'Pédale alu et bakélite, câble ok.',
    'Échelle alu et diable dispos sur place pour charger.',
    'Peinture type industriel sur les étagères, on les vend aussi.',
  ],
};
/** Of a hundred untrue ones, so many are found out at least; of the rest most are of what a workshop can change. */
const FEWEST: Record<Language, number> = { en: 69, de: 51, fr: 51 };

const knowledge = demoKnowledge();
const isLong = process.env.BEDPLATE_LONG === '1';

describe.each(LANGUAGES)('sentences in %s', (language) => {
  it('that say nothing wrong of the machine accuse nobody', { timeout: 120_000 }, () => {
    const found = accused(language, knowledge, isLong);
    if (isLong) expect(found).toEqual(ACCUSED[language]);
    else expect(found.filter((sentence) => !ACCUSED[language].includes(sentence))).toEqual([]);
  });

  it('that do are found out', () => {
    const share = foundOut(language, knowledge).length / sentences(language, 'untrue').length;
    expect(Math.round(share * 100)).toBeGreaterThanOrEqual(FEWEST[language]);
  });
});
