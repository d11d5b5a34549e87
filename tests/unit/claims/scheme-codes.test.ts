import { describe, expect, it } from 'vitest';
import { schemeCodes } from '../../../src/claims/scheme-codes';
import type { Scheme } from '../../../src/pack/schema/serials';

const scheme = (rest: Partial<Scheme>): Scheme => ({ id: 'x', maker: 'Grindlewade', prefix: '', digits: 5, ...rest });
const SCHEMES = [
  scheme({ prefix: 'QT' }),
  scheme({ digits: 6, suffix: 'LW' }),
  scheme({ prefix: 'J', digits: [5, 6] }),
  scheme({ digits: 7 }),
];

const codes = (text: string): string[] => schemeCodes(text, SCHEMES).map(({ normal }) => normal);

describe('numbers in the form of a lettered scheme', () => {
  it.each([
    ['QT12345 under the bed', 'QT12345'],
    ['QT 12-345', 'QT12345'],
    ['(QT 12 345)', 'QT12345'],
    ['234567 LW', '234567LW'],
    ['234567LW.', '234567LW'],
    ['234.567-LW', '234567LW'],
    ['J 123456 on the plate', 'J123456'],
    ['Q.T. 12 345', 'QT12345'],
    ['QT 12,345', 'QT12345'],
    ['QT - 12345', 'QT12345'],
    ['QT: 12345', 'QT12345'],
    ['QT-Nr. 12 345', 'QT12345'],
    ['qt12345', 'QT12345'],
    ['qt 12345', 'QT12345'],
    ['no j123.456, works', 'J123456'],
    ['234567lw', '234567LW'],
    ['QT 12345 1958', 'QT12345'],
    ['from 1958 234 567 LW', '234567LW'],
  ])('%s', (text, normal) => expect(codes(text)).toEqual([normal]));

  it.each([
    'QT1234',
    'QT123456',
    'XQT12345',
    'QT12345B',
    'j 123456',
    '234567 lW',
    'QTs 12345',
    '234567 LWX',
    '1234567',
    'J12345678',
    'in QT we made 12345',
  ])('none in: %s', (text) => expect(codes(text)).toEqual([]));

  it('quotes what is written', () => {
    const text = 'It says QT 12345 there.';
    const { start, end, quote } = schemeCodes(text, SCHEMES)[0]!;
    expect(text.slice(start, end)).toBe(quote);
    expect(quote).toBe('QT 12345');
  });
});
