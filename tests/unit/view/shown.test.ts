import { describe, expect, it } from 'vitest';
import { shownTexts } from '../../../src/text/catalogue/shown';
import { langOf, shown } from '../../../src/view/shown';

describe('a text on the screen', () => {
  const words = (count: number) => Array.from({ length: count }, (_, i) => `word${i % 10}`).join(' ');

  it('is cut between words, and says how much is left out', () => {
    const text = words(100);
    const cut = shown(text, 62);
    const [kept = ''] = cut.split('…');
    expect(text.startsWith(`${kept} `)).toBe(true);
    expect(kept.length).toBeLessThanOrEqual(62);
    expect(cut).toBe(`${kept}${shownTexts.cut(text.length - kept.length)}`);
  });

  it('is left whole where the rest would be hardly longer than saying so', () => {
    expect(shown('x'.repeat(140), 100)).toBe('x'.repeat(140));
    expect(shown('x'.repeat(141), 100)).toBe(`${'x'.repeat(100)}${shownTexts.cut(41)}`);
  });

  it('is never cut between the halves of a character', () => {
    const text = `${'x'.repeat(99)}${'😀'.repeat(60)}`;
    expect(shown(text, 100)).toBe(`${'x'.repeat(99)}${shownTexts.cut(120)}`);
  });

  it('hides nothing', () => {
    expect(shown('rare\u202emodel\u0000')).toBe('rare⟨U+202E⟩model⟨U+0000⟩');
  });
});

describe('the language of a text', () => {
  it.each(['en', 'de-AT', 'zh-Hant-TW'])('may name its language %s', (tag) => {
    expect(langOf(tag)).toBe(tag);
  });

  it.each(['', 'e', '"><script>', 'en"', 'x'.repeat(50), null])('may not name as a language: %s', (tag) => {
    expect(langOf(tag)).toBeUndefined();
  });
});
