import { describe, expect, it } from 'vitest';
import { fitted, fittingTo } from '../../../src/text/fitted';

// Every character that a European text may hold, and some beyond: the pattern has to say of each what it says by itself.
const CHARACTERS = [
  ...Array.from({ length: 0x3100 }, (_, code) => code),
  ...Array.from({ length: 0xa00 }, (_, at) => 0x1f200 + at),
  ...[0x597d, 0xfe0f],
].map((code) => String.fromCodePoint(code));

/** As a pattern is written. */
const written = (source: string): TemplateStringsArray => Object.assign([source], { raw: [source] });

describe('a fitted pattern', () => {
  it.each([
    ['^\\p{L}$', 'u'],
    ['^\\p{Lu}$', 'u'],
    ['^\\p{N}$', 'u'],
    ['^\\p{Sc}$', 'u'],
    ['^[^\\p{L}\\p{N}\\p{Sc}]$', 'u'],
    ['^\\p{L}$', 'iu'],
  ])('says the same of each character: /%s/%s', (source, flags) => {
    const plain = new RegExp(source, flags);
    const quick = fitted(flags)(written(source));
    const chosen = fittingTo(flags)(written(source));
    for (const one of CHARACTERS) {
      expect([one, quick.test(one)]).toEqual([one, plain.test(one)]);
      expect([one, chosen(one).test(one)]).toEqual([one, plain.test(one)]);
    }
  });

  it('is used as any pattern is', () => {
    expect('x, 12 Ödön'.replace(fitted('u')`\p{Lu}(\p{L}+)`, '<$1>')).toBe('x, 12 <dön>');
    expect(fitted('u')`\[\p{L}\]`.exec('a [b]')?.index).toBe(2);
    expect('Ödön 12'.match(fittingTo('gu')`[\p{L}\d]+`('Ödön 12'))).toEqual(['Ödön', '12']);
  });

  it('takes in what is written elsewhere', () => {
    const word = String.raw`\p{L}+`;
    expect(fitted('u')`^${word} ${word}$`.test('zwölf Öl')).toBe(true);
  });

  it('goes on from its last place where it is sticky', () => {
    const sticky = fitted('uy')` ?(\p{L}+)`;
    sticky.lastIndex = 3;
    expect(sticky.exec('two words')?.[1]).toBe('words');
    expect(sticky.lastIndex).toBe(9);
    expect(sticky.exec('two words')).toBeNull();
    expect(sticky.lastIndex).toBe(0);
  });
});
