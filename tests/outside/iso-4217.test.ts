import { data } from 'currency-codes';
import { describe, expect, it } from 'vitest';
import { currencyCodes, minorUnits } from '../../src/quantity/currencies';

/**
 * ISO 4217 list one, as carried by the npm package currency-codes 2.2.0 (MIT; its data.js is generated from the
 * maintenance agency's list-one.xml, last updated there on 2024-06-25).
 */
const published = data;

/** Codes of the list in which no price is asked: funds and units of account, metals, tests, no currency. */
const NO_PRICES = new Set(
  'BOV CHE CHW CLF COU MXV USN UYI UYW XAG XAU XBA XBB XBC XBD XDR XPD XPT XSU XTS XUA XXX'.split(' '),
);
/** Ours that the list of that day lacks: new since, or withdrawn since but still written. */
const NOT_IN_LIST = new Set(['XCG']);

describe('ISO 4217', () => {
  it('has what the list has', () => {
    expect(published.length).toBeGreaterThan(170);
  });

  it.each(published.filter(({ code }) => !NO_PRICES.has(code)))('$code has $digits decimals', ({ code, digits }) => {
    expect(minorUnits(code)).toBe(digits);
  });

  it('leaves out what no price is asked in, and nothing else', () => {
    const left = published.filter(({ code }) => minorUnits(code) === null).map(({ code }) => code);
    expect(left.sort()).toEqual([...NO_PRICES].sort());
  });

  it('knows no code that the list does not know, but for those named here', () => {
    const codes = new Set(published.map(({ code }) => code));
    expect(
      currencyCodes()
        .filter((code) => !codes.has(code))
        .sort(),
    ).toEqual([...NOT_IN_LIST].sort());
  });
});
