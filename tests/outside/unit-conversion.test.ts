import quantity from 'js-quantities';
import { describe, expect, it } from 'vitest';
import { findLengths, findWeights } from '../../src/quantity/measures';

/**
 * NIST Special Publication 811 (2008), appendix B.8, the factors printed in bold there as exact, to the digits
 * printed; written from memory of the table. Where a factor is printed rounded, the last digit says how far.
 */
const NIST: [text: string, inSi: number, digits: number][] = [
  ['1 lb', 0.45359237, 8],
  ['1 oz', 0.02834952, 7],
  ['1 stone', 6.350293, 7],
  ['1 inch', 25.4, 3],
  ['1 ft', 304.8, 4],
];

describe('NIST SP 811, appendix B.8', () => {
  it.each(NIST)('%s', (text, inSi, digits) => {
    const [measure] = [...findWeights(text), ...findLengths(text)];
    expect(Number(measure!.low.toPrecision(digits))).toBe(Number(inSi.toPrecision(digits)));
  });
});

/** The npm package js-quantities 1.8.0 (MIT): a table of its own, by other hands. */
const WEIGHTS: [ours: string, theirs: string][] = [
  ['21 lb', '21 pound'],
  ['8 oz', '8 ounce'],
  ['21 lb 8 oz', '21.5 pound'],
  ['2 st 4 lb', '32 pound'],
  ['3 stone', '3 stone'],
  ['340 g', '340 gram'],
  ['11,5 kg', '11.5 kg'],
  ['0.75 lb', '0.75 pound'],
];
const LENGTHS: [ours: string, theirs: string][] = [
  ['10 1/2 inches', '10.5 inch'],
  ['3/8 in', '0.375 inch'],
  ['6 ft 2 in', '74 inch'],
  ['5\' 6"', '5.5 foot'],
  ['38 cm', '38 cm'],
  ['1.5 m', '1.5 m'],
  ['14 3/16"', '14.1875 inch'],
];

describe('js-quantities', () => {
  it.each(WEIGHTS)('%s is as heavy as %s', (ours, theirs) => {
    const [weight] = findWeights(ours);
    // Its ounce is rounded in the tenth digit.
    expect(weight!.low / quantity(theirs).to('kg').scalar).toBeCloseTo(1, 8);
    expect(weight!.high).toBe(weight!.low);
  });

  it.each(LENGTHS)('%s is as long as %s', (ours, theirs) => {
    const [length] = findLengths(ours);
    expect(length!.low / quantity(theirs).to('mm').scalar).toBeCloseTo(1, 10);
  });
});
