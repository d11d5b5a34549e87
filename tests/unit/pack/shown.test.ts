import { describe, expect, test } from 'vitest';
import { shown } from '../../../src/pack/shown';

describe('shown', () => {
  test.each<[string | number | boolean, string]>([
    ['iron', '"iron"'],
    ['a "b" \\ c', '"a \\"b\\" \\\\ c"'],
    ['', '""'],
    ['a\nb', '"a\\nb"'],
    ['\u202e', '"\\u202e"'],
    ['\u{e0041}', '"\\u{e0041}"'],
    ['\ud83d', '"\\ud83d"'],
    ['Nähmaschine 😀', '"Nähmaschine 😀"'],
    [1.5, '1.5'],
    [-0, '0'],
    [true, 'true'],
  ])('%j is shown as %s', (value, text) => {
    expect(shown(value)).toBe(text);
  });

  test('60 characters are shown whole, 61 are cut to 59 and a mark', () => {
    expect(shown('😀'.repeat(60))).toBe(`"${'😀'.repeat(60)}"`);
    expect(shown('😀'.repeat(61))).toBe(`"${'😀'.repeat(59)}…"`);
    expect(shown('a'.repeat(61))).toBe(`"${'a'.repeat(59)}…"`);
  });

  test('a text of unseen characters alone stays short', () => {
    expect(shown('\u202e'.repeat(1_000_000)).length).toBeLessThan(400);
  });
});
