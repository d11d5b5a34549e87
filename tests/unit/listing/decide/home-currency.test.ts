import { describe, expect, it } from 'vitest';
import { homeCurrency } from '../../../../src/listing/decide/home-currency';
import { readListing } from '../../../../src/listing/read';
import { documentOf } from '../dom';

describe('the currency that a sign means on a page', () => {
  it.each([
    ['de-ch', null, 'CHF'],
    ['en-au', null, 'AUD'],
    ['sv', null, 'SEK'],
    ['zh-hant-hk', null, 'HKD'],
    ['fr', 'https://marche.example.ch/a/1', 'CHF'],
    ['de', 'https://markt.example/a/1', null],
    ['en', null, null],
    // A country of the euro has no sign that others share.
    ['de-at', 'https://markt.example.ch/', null],
    [null, null, null],
    // A word that every object of the language knows is no language.
    ['constructor', null, null],
  ])('of %s at %s is %s', (language, url, currency) => {
    expect(homeCurrency(language, url)).toBe(currency);
  });

  it('settles what the amount leaves open, and nothing else', () => {
    const priced = (lang: string, price: string) =>
      readListing(
        documentOf(`<html lang="${lang}"><title>Oak stand</title><h1>Oak stand</h1><p class="price">${price}</p>`),
      ).price;
    expect(priced('de-CH', 'Fr. 1’450.–')).toMatchObject({ amount: '1450', currency: 'CHF' });
    expect(priced('sv', '1 200 kr')).toMatchObject({ amount: '1200', currency: 'SEK' });
    expect(priced('en', '$65')).toMatchObject({ amount: '65', currency: null });
    expect(priced('en-CA', '€65')).toMatchObject({ amount: '65', currency: 'EUR' });
  });
});
