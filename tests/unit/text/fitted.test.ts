import { describe, expect, it } from 'vitest';
import { fitted } from '../../../src/text/fitted';

// Every character that a European text may hold, and some beyond: the pattern has to say of each what it says by itself.
const CHARACTERS = [
  ...Array.from({ length: 0x3100 }, (_, code) => code),
  ...Array.from({ length: 0xa00 }, (_, at) => 0x1f200 + at),
  ...[0x597d, 0xfe0f],
].map((code) => String.fromCodePoint(code));

describe('a fitted pattern', () => {
  it.each([/^\p{L}$/u, /^\p{Lu}$/u, /^\p{N}$/u, /^\p{Sc}$/u, /^[^\p{L}\p{N}\p{Sc}]$/u, /^\p{L}$/iu])(
    'says the same of each character: %s',
    (pattern) => {
      const plain = new RegExp(pattern.source, pattern.flags);
      const quick = fitted(pattern);
      for (const one of CHARACTERS) expect([one, quick.test(one)]).toEqual([one, plain.test(one)]);
    },
  );

  it('is used as any pattern is', () => {
    expect('x, 12 Ödön'.replace(fitted(/\p{Lu}(\p{L}+)/u), '<$1>')).toBe('x, 12 <dön>');
    expect(fitted(/\[\p{L}\]/u).exec('a [b]')?.index).toBe(2);
    expect('a1b2c'.split(fitted(/\p{N}/u))).toEqual(['a', 'b', 'c']);
  });

  it('goes on from its last place where it is sticky', () => {
    const sticky = fitted(/ ?(\p{L}+)/uy);
    sticky.lastIndex = 3;
    expect(sticky.exec('two words')?.[1]).toBe('words');
    expect(sticky.lastIndex).toBe(9);
    expect(sticky.exec('two words')).toBeNull();
    expect(sticky.lastIndex).toBe(0);
  });
});
