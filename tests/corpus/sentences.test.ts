import { describe, expect, it } from 'vitest';
import { accused, foundOut, type Language, languagesFor, MACHINES, type Machine, sentences } from './sentences';

/** Read wrongly so far. */
const ACCUSED: Partial<Record<`${Language} ${Machine}`, readonly string[]>> = {
  'en cressiter': [
    'Prewar quality in a postwar machine.',
    "Side loading is a pain, this isn't.",
    'zigzag industrial free arm treadle hand crank vintage antique',
  ],
  'de veltrammer': ['Die 6 Z wäre was für euch, die kann Zickzack'],
  'en q42': ['Posted in two parcels, 9 kg and 11 kg with packing, because head and case go separately.'],
  'fr cressiter-2': ['Le carter de courroie, en alu, a un petit choc.', "L'alu du carter de lampe est piqué."],
  'fr coquelicot': ['Le pédalier de mémé sert de table, pas de lien avec la machine.'],
  'fr lantern-2': ['Bras libre en 1928, vous rêvez !'],
};
/** Of a hundred untrue ones, so many are found out at least; of the rest most are of what a workshop can change. */
const FEWEST: Record<Machine, Partial<Record<Language, number>>> = {
  cressiter: { en: 75, de: 55, fr: 61 },
  q42: { en: 68, de: 65, fr: 63 },
  lantern: { en: 68, de: 78, fr: 74 },
  'cressiter-2': { de: 78, fr: 80 },
  veltrammer: { de: 72 },
  'q42-2': { fr: 86 },
  'lantern-2': { fr: 90 },
  castrimond: { fr: 97 },
  coquelicot: { fr: 93 },
};

const isLong = process.env.BEDPLATE_LONG === '1';
/** Those of machines of which the usual run tries enough others wait for the long one. */
const TRIED = isLong ? MACHINES : MACHINES.filter((machine) => !machine.endsWith('-2') && machine !== 'coquelicot');

describe.each(TRIED)('sentences for a %s', (machine) => {
  describe.each(languagesFor(machine))('in %s', (language) => {
    const known = ACCUSED[`${language} ${machine}`] ?? [];

    it('that say nothing wrong of the machine accuse nobody', { timeout: 120_000 }, () => {
      const found = accused(language, machine, isLong);
      if (isLong) expect(found).toEqual(known);
      else expect(found.filter((sentence) => !known.includes(sentence))).toEqual([]);
    });

    it('that do are found out', () => {
      const share = foundOut(language, machine).length / sentences(language, 'untrue', machine).length;
      expect(Math.round(share * 100)).toBeGreaterThanOrEqual(FEWEST[machine][language] ?? 100);
    });
  });
});
