import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beside, hanging, pageWidth, widthOf, wrap } from '../../../src/cli/layout';

describe('layout', () => {
  it('wraps at words, and cuts a word only where it is longer than the line', () => {
    expect(wrap('a bed of cast iron', 10)).toEqual(['a bed of', 'cast iron']);
    expect(wrap('x Handradgehäuse y', 6)).toEqual(['x', 'Handra', 'dgehäu', 'se y']);
    expect(wrap('', 10)).toEqual(['']);
    expect(wrap('a\n\nb', 10)).toEqual(['a', '', 'b']);
  });

  it('loses no letter and keeps to its width, whatever the text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), fc.integer({ min: 4, max: 40 }), (text, width) => {
        const lines = wrap(text, width);
        for (const line of lines) expect(widthOf(line)).toBeLessThanOrEqual(width);
        expect(lines.join('').replace(/\s/g, '')).toBe(text.replace(/\s/g, ''));
      }),
    );
  });

  it('counts what is drawn wide as two, and combining marks as none', () => {
    expect(widthOf('機械')).toBe(4);
    expect(widthOf('e\u0301')).toBe(1);
  });

  it('sets columns side by side', () => {
    expect(beside(['said:', 'a'], ['known:', 'b', 'c'], 6, 2)).toEqual([
      '  said:  | known:',
      '  a      | b',
      '         | c',
    ]);
    expect(hanging('1.', 'one two', 4, 8)).toEqual(['1.  one', '    two']);
  });

  it('keeps between 72 and 100 columns', () => {
    expect([undefined, 20, 90, 300].map(pageWidth)).toEqual([80, 72, 90, 100]);
  });
});
