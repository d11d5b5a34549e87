import { describe, expect, it } from 'vitest';
import { dayBefore, daysAgo } from '../../../../src/listing/decide/relative-date';

describe('how many days ago', () => {
  it.each([
    ['Listed today', 'en', 0],
    ['Posted 3 days ago', 'en', 3],
    ['an hour ago', 'en', 0],
    ['2 weeks ago in Netherholme', 'en', 14],
    ['yesterday, 18:20', 'en', 1],
    ['Heute, 14:10', 'de', 0],
    ['Gestern', 'de', 1],
    ['vorgestern', 'de', 2],
    ['vor 3 Tagen', 'de', 3],
    ['vor einer Stunde', 'de', 0],
    ['vor 2 Wochen eingestellt', 'de', 14],
    ["aujourd'hui à 09:12", 'fr', 0],
    ['hier à 18:32', 'fr', 1],
    ['il y a 2 heures', 'fr', 0],
    ['il y a 5 jours', 'fr', 5],
    ['3 uur geleden', 'nl', 0],
    ['gisteren', 'nl', 1],
    ['eergisteren', 'nl', 2],
    ['vandaag 10:04', 'nl', 0],
    ['Ieri alle 18:20', 'it', 1],
    ['oggi', 'it', 0],
    ['2 giorni fa', 'it', 2],
    ['hace 5 días', 'es', 5],
    ['ayer', 'es', 1],
    ['hoy', 'es', 0],
    ['hace una semana', 'es', 7],
    ['för 2 dagar sedan', 'sv', 2],
  ])('%s (%s) is %i', (text, language, days) => {
    expect(daysAgo(text, language)).toBe(days);
  });

  it.each([
    ['Hier abzuholen', 'de'],
    ['Made 60 years ago', 'en'],
    ['3 photos', 'en'],
    ['the day after tomorrow', 'en'],
    ['12 November 2026', 'en'],
    ['Heutezutage', 'de'],
  ])('%s (%s) tells none', (text, language) => {
    expect(daysAgo(text, language)).toBeNull();
  });

  it('counts back over months, years and leap days', () => {
    expect(dayBefore('2026-11-29', 0)).toBe('2026-11-29');
    expect(dayBefore('2026-01-02', 3)).toBe('2025-12-30');
    expect(dayBefore('2024-03-01', 1)).toBe('2024-02-29');
    expect(dayBefore('no date', 1)).toBeNull();
  });
});
