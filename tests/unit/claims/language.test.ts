import { describe, expect, it } from 'vitest';
import { languagesOf, speaks } from '../../../src/claims/language';
import { textPart } from '../../../src/claims/part-text';

const languages = (text: string, page: string | null = null): string[] =>
  [...languagesOf(page, [textPart('description', text)])].sort();

describe('the languages an advert may be read in', () => {
  it.each([
    ['It is with the case and has a motor', 'en'],
    ['Sie ist mit dem Koffer und nicht schwer', 'de'],
    ['Celle que je vends, et celle que j’ai gardée', 'fr'],
    ['Elle est avec le coffret et dans un bon état', 'fr'],
  ])('%s', (text, language) => expect(languages(text)).toEqual([language]));

  it('the page’s own beside the seller’s', () =>
    expect(languages('Sie ist mit dem Koffer und nicht schwer', 'en-GB')).toEqual(['de', 'en']));

  it('none tells: every language is tried', () => {
    const none = languagesOf(null, [textPart('description', 'Cressiter 1955')]);
    expect(none.size).toBe(0);
    expect(['en', 'de', 'und'].every((language) => speaks(none, language))).toBe(true);
  });

  it('a phrase of no language speaks in each', () => {
    expect(speaks(new Set(['de']), 'und')).toBe(true);
    expect(speaks(new Set(['de']), 'fr')).toBe(false);
  });
});
