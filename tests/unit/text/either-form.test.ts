import { describe, expect, it } from 'vitest';
import { inEitherForm } from '../../../src/text/either-form';

describe('a pattern for accented letters in either form', () => {
  const pattern = inEitherForm(/\d+ stück/iu);

  it.each(['40 Stück', '40 Stück'.normalize('NFD')])('finds %s', (text) => {
    expect(pattern.exec(text)?.[0]).toBe(text);
  });
  it('takes no plain letter for it', () => expect(pattern.test('40 Stuck')).toBe(false));
  it('keeps the flags', () => expect(inEitherForm(/é/giu).flags).toBe('giu'));
});
