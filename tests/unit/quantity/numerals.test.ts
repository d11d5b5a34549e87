import { describe, expect, it } from 'vitest';
import { decimalMark, readNumeral, scanNumerals } from '../../../src/quantity/numerals';

const read = (text: string, comma: 'group' | 'decimals' = 'group', point: 'group' | 'decimals' = 'group') =>
  scanNumerals(text).map((number) => readNumeral(number, (separator) => (separator === ',' ? comma : point)).value);

describe('readNumeral', () => {
  it.each([
    ['1,340', ['1340']],
    ['1.340,00', ['1340.00']],
    ['1,340.00', ['1340.00']],
    ["1'200.50", ['1200.50']],
    ['1 340 500,5', ['1340500.5']],
    ['12,50,000', ['1250000']],
    ['1.340.500', ['1340500']],
    ['1.340.00', ['1340.00']],
    ['0.450', ['0.450']],
    ['12345.678', ['12345.678']],
    ['11,5', ['11.5']],
    ['007', ['7']],
    ['450 500', ['450500']],
    ['45 50', ['45', '50']],
    ['1234 500', ['1234']],
    ['12.05.2020', ['12']],
    ['5,10,15', ['5']],
    ['450,99 500', ['450.99']],
  ])('%j', (text, values) => {
    expect(read(text)).toEqual(values);
  });

  it('asks what three digits are', () => {
    expect(read('1.340', 'group', 'decimals')).toEqual(['1.340']);
    expect(read('1,340', 'decimals')).toEqual(['1.340']);
  });
});

describe('decimalMark', () => {
  it.each([
    ['en', '.'],
    ['en-GB', '.'],
    ['de', ','],
    ['de-AT', ','],
    ['de-CH', '.'],
    ['fr-CH', '.'],
    ['es-MX', '.'],
    ['pt-BR', ','],
    [null, null],
    ['', null],
  ])('%j: %j', (language, mark) => {
    expect(decimalMark(language)).toBe(mark);
  });
});
