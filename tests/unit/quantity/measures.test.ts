import { describe, expect, it } from 'vitest';
import { findLengths, findWeights } from '../../../src/quantity/measures';

const POUND = 0.45359237;
const kg = (value: number) => Number(value.toPrecision(12));

describe('findWeights', () => {
  it.each<[text: string, low: number, high: number, quote: string]>([
    ['21 lb 8 oz', kg(21.5 * POUND), kg(21.5 * POUND), '21 lb 8 oz'],
    ['21lbs 8oz', kg(21.5 * POUND), kg(21.5 * POUND), '21lbs 8oz'],
    ['21lb8oz', kg(21.5 * POUND), kg(21.5 * POUND), '21lb8oz'],
    ['21 pounds and 8 ounces', kg(21.5 * POUND), kg(21.5 * POUND), '21 pounds and 8 ounces'],
    ['2 st 4 lb', kg(32 * POUND), kg(32 * POUND), '2 st 4 lb'],
    ['2 stone 4', kg(32 * POUND), kg(32 * POUND), '2 stone 4'],
    ['weighs 2 st', kg(28 * POUND), kg(28 * POUND), '2 st'],
    ['11-12 kg', 11, 12, '11-12 kg'],
    ['11kg-12kg', 11, 12, '11kg-12kg'],
    ['between 11 and 12 kg', 11, 12, '11 and 12 kg'],
    ['11 bis 12 Kilogramm', 11, 12, '11 bis 12 Kilogramm'],
    ['11,5 kg', 11.5, 11.5, '11,5 kg'],
    ['11.5 kilos', 11.5, 11.5, '11.5 kilos'],
    ['10½ kg', 10.5, 10.5, '10½ kg'],
    ['340 g', 0.34, 0.34, '340 g'],
    ['22 Pfund', 11, 11, '22 Pfund'],
    ['weighs 21 pounds', kg(21 * POUND), kg(21 * POUND), '21 pounds'],
    ['heavy at 25 pounds', kg(25 * POUND), kg(25 * POUND), '25 pounds'],
    ['5 kg. Die Maschine', 5, 5, '5 kg'],
  ])('%j', (text, low, high, quote) => {
    expect(findWeights(text)).toMatchObject([{ low, high, quote, unit: 'kg' }]);
  });

  it.each([
    ['approx. 11kg', true],
    ['about 25 lbs', true],
    ['ca. 11 kg', true],
    ['~11 kg', true],
    ['11kg or so', true],
    ['12 kg environ', true],
    ['11 kg', false],
  ])('%j is approximate: %s', (text, approximate) => {
    expect(findWeights(text)[0]?.approximate).toBe(approximate);
  });

  it.each([
    '21 pounds',
    'asking 21 pounds, heavy',
    '1st class',
    '2 St. Garn',
    'K20 kg',
    '£11kg',
    'class 15',
    'class 15 g',
    '11',
  ])('%j is no weight', (text) => {
    expect(findWeights(text)).toEqual([]);
  });

  it('keeps two weights apart', () => {
    expect(findWeights('11kg/24lb').map(({ quote }) => quote)).toEqual(['11kg', '24lb']);
    expect(findWeights('1954 - 11 kg').map(({ low }) => low)).toEqual([11]);
  });

  it('reads three digits by the language of the page', () => {
    expect(findWeights('1.340 g', { language: 'de' })[0]?.low).toBe(1.34);
    expect(findWeights('1.340 kg', { language: 'en' })[0]?.low).toBe(1.34);
    expect(findWeights('1,340 g')[0]?.low).toBe(1.34);
  });
});

describe('findLengths', () => {
  it.each<[text: string, mm: number[]]>([
    ['3/8 in', [9.525]],
    ['10 1/2 inches', [266.7]],
    ['10-1/2"', [266.7]],
    ['10½″ bed', [266.7]],
    ['12" bed', [304.8]],
    ['6 ft 2 in', [1879.6]],
    ['5\' 6"', [1676.4]],
    ['38 x 18 x 28 cm', [380, 180, 280]],
    ['14 1/4 x 7 inches', [361.95, 177.8]],
    ['15" x 7"', [381, 177.8]],
    ['14.5"x7"', [368.3, 177.8]],
    ['370x180x280mm', [370, 180, 280]],
    ['37cmx18cm', [370, 180]],
    ['needle 15x1', []],
    ['bed is 10 in long', [254]],
    ['10 in.', [254]],
    ['20.3mm across, 11,7 mm tall', [20.3, 11.7]],
    ['1.5m cable', [1500]],
    ['15 Zoll', [381]],
    ['6 feet long', [1828.8]],
    ['3 in 1', []],
    ['2 in stock', []],
    ['comes with 5 feet', []],
    ['the "class 15" bobbin', []],
    ['„Klasse 15“ Spule', []],
    ["the 50's", []],
    ['5m2', []],
    ['£10 in cash', []],
    ['sold in 1954 in good order', []],
  ])('%j', (text, mm) => {
    expect(findLengths(text).map(({ low }) => low)).toEqual(mm);
  });

  it('reads a range', () => {
    expect(findLengths('30-40 cm')).toMatchObject([{ low: 300, high: 400, unit: 'mm', quote: '30-40 cm' }]);
  });
});
