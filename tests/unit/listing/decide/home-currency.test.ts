import { describe, expect, it } from 'vitest';
import { homeCurrency } from '../../../../src/listing/decide/home-currency';
import { countryOfAddress } from '../../../../src/listing/page/country';
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
    // A country in the address's path; one alone that may be a state, or a language, is none.
    ['en', 'https://market.example/us/a/1', 'USD'],
    ['en', 'https://market.example/en-ca/a/1', 'CAD'],
    ['en', 'https://market.example/en_AU', 'AUD'],
    ['en', 'https://market.example/ca/a/1', null],
    ['en', 'https://market.example/usher/1', null],
    ['en', 'https://market.example/a/us/1', null],
    ['en-us', 'https://market.example/en-ca/a/1', null],
    ['en', 'https://market.example.au/nz/a/1', null],
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

  it.each([
    ['en', null, ['us'], 'USD'],
    ['en', null, ['Canada', 'ca'], 'CAD'],
    // Countries at odds, with each other or with what the page's readers speak, leave it open.
    ['en', null, ['US', 'CA'], null],
    ['en-us', null, ['CA'], null],
    ['en', 'https://market.example.au/a/1', ['US'], null],
    // One of the euro has no sign that others share.
    ['en-us', null, ['DE'], 'USD'],
    ['de-de', null, ['US'], null],
  ])('of %s at %s, stated as in %j, is %s', (language, url, countries, currency) => {
    expect(homeCurrency(language, url, countries)).toBe(currency);
  });

  it.each([
    ['en', null, 'USD', 'USD'],
    ['en-de', null, 'USD', 'USD'],
    ['en-us', null, 'AUD', null],
    ['en', 'https://market.example.au/a/1', 'USD', null],
  ])('of %s at %s, whose scripts name %s, is %s', (language, url, named, currency) => {
    expect(homeCurrency(language, url, [], named)).toBe(currency);
  });

  it.each([
    ['<script>window.shop = { "currencyCode": "CAD", items: 2 }</script>', 'CAD'],
    ['<script>var countryCurrency = "CAD", items = 2</script>', 'CAD'],
    ["<script>shop.currency = 'NZD'; track({ currency_code: 'NZD' })</script>", 'NZD'],
    ['<div itemscope itemprop="offers"><meta itemprop="priceCurrency" content="AUD"></div>', 'AUD'],
    ['<meta property="product:price:currency" content="SGD">', 'SGD'],
    // Of several a page lets its readers choose; an advertiser is paid in its own.
    ['<script>var all = [{"currency":"CAD"},{"currency":"USD"}]</script>', null],
    ['<script>bids = { adServerCurrency: "USD" }</script>', null],
    ['<script>var all = {"currencySymbol":"$"}</script>', null],
  ])('is told by %s', (told, currency) => {
    const page = `<html lang="en"><title>Oak stand</title><body>${told}<h1>Oak stand</h1><p class="price">$65</p></body></html>`;
    expect(readListing(documentOf(page)).price).toMatchObject({ amount: '65', currency });
  });

  it.each([
    ['Lower Fettle, OR 97099', 'us'],
    ['14 Treadle Lane, Lower Fettle, OR 97099-1200', 'us'],
    ['Fettle Bay, BC V0X 1Y2', 'ca'],
    ['Fettle Creek VIC 3999', 'au'],
    ['99999 Fettle, NB', undefined],
    ['Model TX, 12000 made', undefined],
    ['Fettle, NL 64000', undefined],
    ['Serial MB 12345', undefined],
  ])('an address such as "%s" is written in %s', (text, country) => {
    expect(countryOfAddress(text)).toBe(country);
  });

  it('is told by where the advert says that it is', () => {
    const priced = (head: string, place: string) =>
      readListing(
        documentOf(
          `<html lang="en"><head><title>Oak stand</title>${head}</head><body><h1>Oak stand</h1><p class="price">$65</p><p>${place}</p></body></html>`,
        ),
      ).price?.currency;
    expect(priced('', 'Lower Fettle, OR 97099')).toBe('USD');
    expect(priced('<meta name="geo.region" content="US-OR">', '')).toBe('USD');
    expect(priced('<meta property="og:locale" content="en_CA">', '')).toBe('CAD');
    expect(priced('<meta property="og:locale" content="en_US">', '')).toBeNull();
    expect(priced('<meta name="geo.region" content="CA-BC">', 'Lower Fettle, OR 97099')).toBeNull();
    const thing = (country: string) =>
      `<script type="application/ld+json">{"@type":"Product","name":"Oak stand","offers":{"@type":"Offer","availableAtOrFrom":{"@type":"Place","address":{"@type":"PostalAddress","addressLocality":"Lower Fettle","addressCountry":"${country}"}}}}</script>`;
    expect(priced(thing('US'), '')).toBe('USD');
    expect(priced(thing('New Zealand'), '')).toBe('NZD');
  });
});
