import { describe, expect, it } from 'vitest';
import { readDate } from '../../../../src/listing/decide/dates';

describe('readDate', () => {
  it.each([
    ['2024-03-12', null, '2024-03-12'],
    ['2024-03-12T08:30:00+01:00', null, '2024-03-12'],
    ['Listed on 12 March 2024', 'en', '2024-03-12'],
    ['March 12, 2024', 'en', '2024-03-12'],
    ['12th Sept 2024', 'en', '2024-09-12'],
    ['Sep 3 2024, 8 pm', 'en', '2024-09-03'],
    ['3. März 2024', 'de', '2024-03-03'],
    ['01. Dezember 2023, 18:22 Uhr', 'de', '2023-12-01'],
    ['14 février 2024', 'fr', '2024-02-14'],
    ['1er août 2024', 'fr', '2024-08-01'],
    ['le 2 juillet 2024', 'fr', '2024-07-02'],
    ['2 juin 2024', 'fr', '2024-06-02'],
    ['3 mei 2024', 'nl', '2024-05-03'],
    ['4 de enero de 2024', 'es', '2024-01-04'],
    ['5 giugno 2024', 'it', '2024-06-05'],
    ['12.03.2024', null, '2024-03-12'],
    ['12.3.24', 'de', '2024-03-12'],
    ['25/03/2024', null, '2024-03-25'],
    ['03/25/2024', null, '2024-03-25'],
    ['03/04/2024', 'en-us', '2024-03-04'],
    ['03/04/2024', 'en-gb', '2024-04-03'],
    ['03/04/2024', 'fr', '2024-04-03'],
    ['04/04/2024', null, '2024-04-04'],
  ])('%j in %s is %s', (text, language, date) => {
    expect(readDate(text, language)).toBe(date);
  });

  it.each([
    ['03/04/2024', null, 'two days, by the order of day and month'],
    ['03/04/2024', 'en', 'two days: English has both orders'],
    ['3 days ago', 'en', 'needs today'],
    ['gestern', 'de', 'needs today'],
    ['2024-02-30', null, 'no such day'],
    ['31.04.2024', 'de', 'no such day'],
    ['12 Marchpane 1924', 'en', 'before there were adverts on pages'],
    ['1.2.3.4', null, 'no date'],
    ['', null, 'nothing'],
  ])('%j in %s: %s', (text, language, _why) => {
    expect(readDate(text, language)).toBeNull();
  });
});
