import { describe, expect, it } from 'vitest';
import { saying, short } from './support/reading';

const values = (text: string): string[] => short(saying(text).wordings.filter(({ entry }) => /^says/.test(entry.id)));

describe('things numbered in a list', () => {
  it('only the one that names what is on sale speaks of it', () =>
    expect(values('1) The Cressiter, cast iron. 2) A machine with zigzag. 3) A cast iron doorstop.')).toEqual([
      'cast iron',
      'zigzag (other)',
      'cast iron (other)',
    ]));

  it('where none does, the list is of features', () =>
    expect(values('1) cast iron 2) zigzag 3) clean')).toEqual(['cast iron', 'zigzag']));

  it('other things with prices of their own, behind "also:"', () => {
    expect(values('The Cressiter, cast iron.\nAlso: overlocker, zigzag, £60. Ironing board £5.\nZigzag.')).toEqual([
      'cast iron',
      'zigzag (other)',
      'Zigzag',
    ]);
    expect(values('Also: zigzag, reverse. £60 the lot.')).toEqual(['zigzag']);
  });

  it('two numbers are no list unless each has its price, nor numbers out of order', () => {
    expect(values('1) The Cressiter. 2) zigzag.')).toEqual(['zigzag']);
    expect(values('1) The Cressiter, cast iron. £90. 2) An oven, zigzag handle. £20.')).toEqual([
      'cast iron',
      'zigzag (other)',
    ]);
    expect(values('3) The Cressiter. 7) zigzag. 9) clean')).toEqual(['zigzag']);
  });
});
