import { describe, expect, test } from 'vitest';
import type { Scheme } from '../../../src/pack/schema/serials';
import { digitRange, formText, numberIn, numberInTable, writtenIn } from '../../../src/pack/serial-form';

const k5: Scheme = { id: 'k', prefix: 'K', digits: 5 };
const open: Scheme = { id: 'o', prefix: '', digits: [4, 6] };
const both: Scheme = { id: 'b', prefix: 'AB', digits: [2, 3], suffix: 'C' };
/** A prefix that is a digit: "2" and four digits, or five digits? The whole form is tried first. */
const digitPrefix: Scheme = { id: 'd', prefix: '2', digits: 4 };

describe('numberIn: a normalised serial, as stamped', () => {
  test.each<[Scheme, string, number | null]>([
    [k5, 'K20417', 20417],
    [k5, 'K00001', 1],
    [k5, '20417', null],
    [k5, 'K2041', null],
    [k5, 'K204170', null],
    [k5, 'L20417', null],
    [k5, 'K2O417', null],
    [k5, 'K', null],
    [k5, '', null],
    [k5, 'k20417', null],
    [k5, 'K٢٠٤١٧', null],
    [open, '1234', 1234],
    [open, '123456', 123456],
    [open, '123', null],
    [open, '1234567', null],
    [open, '-1234', null],
    [open, '1e10', null],
    [both, 'AB12C', 12],
    [both, 'AB123C', 123],
    [both, 'AB1C', null],
    [both, 'AB12', null],
    [both, 'ABC', null],
    [digitPrefix, '21234', 1234],
    [digitPrefix, '1234', null],
    [{ id: 'x', prefix: 'AA', digits: 1, suffix: 'AA' }, 'AAA', null],
    [{ id: 'x', prefix: '', digits: 15 }, '999999999999999', 999_999_999_999_999],
  ])('%j: %s is %s', (scheme, normal, number) => {
    expect(numberIn(scheme, normal)).toBe(number);
  });
});

describe('numberInTable: as printed, whole or digits alone', () => {
  test.each<[Scheme, string, number | null]>([
    [k5, 'K20417', 20417],
    [k5, 'k 20-417', 20417],
    [k5, 'K.20/417', 20417],
    [k5, '20417', 20417],
    [k5, '7', 7],
    [k5, '100000', null],
    [k5, 'K7', null],
    [k5, 'L20417', null],
    [k5, '', null],
    [k5, ' ', null],
    [both, 'ab 12 c', 12],
    [both, '12', 12],
    [digitPrefix, '21234', 1234],
    [digitPrefix, '2123', 2123],
  ])('%j: %j is %s', (scheme, printed, number) => {
    expect(numberInTable(scheme, printed)).toBe(number);
  });
});

describe('writtenIn', () => {
  test.each<[Scheme, number, string]>([
    [k5, 1, 'K00001'],
    [k5, 20417, 'K20417'],
    [open, 1, '0001'],
    [open, 123456, '123456'],
    [both, 7, 'AB07C'],
  ])('%j: %d is stamped %s', (scheme, number, written) => {
    expect(writtenIn(scheme, number)).toBe(written);
  });
});

test.each<[Scheme, string]>([
  [k5, 'K + 5 digits'],
  [open, '4 to 6 digits'],
  [both, 'AB + 2 to 3 digits + C'],
])('formText of %j is %s', (scheme, text) => {
  expect(formText(scheme)).toBe(text);
});

test('digitRange of one width and of several', () => {
  expect(digitRange(k5)).toEqual([5, 5]);
  expect(digitRange(open)).toEqual([4, 6]);
});
