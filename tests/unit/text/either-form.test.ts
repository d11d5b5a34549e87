import { describe, expect, it } from 'vitest';
import { inEitherForm } from '../../../src/text/either-form';

describe('a pattern for accented letters in any form', () => {
  const pattern = inEitherForm(/\d+ stück/iu);

  it.each(['40 Stück', '40 Stück'.normalize('NFD'), '40 Stuck'])('finds %s', (text) => {
    expect(pattern.exec(text)?.[0]).toBe(text);
  });
  it('takes no other letter for it', () => expect(pattern.test('40 Steck')).toBe(false));
  it('keeps the flags', () => expect(inEitherForm(/é/giu).flags).toBe('giu'));
});
