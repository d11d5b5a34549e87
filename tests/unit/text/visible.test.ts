import { describe, expect, it } from 'vitest';
import { visible } from '../../../src/text/visible';

describe('what is seen of a text', () => {
  it.each([
    ['KD372118', 'KD372118'],
    ['KD37\u200b21\u200b18', 'KD372118'],
    ['\u200bKD\u00ad372118\ufeff', 'KD372118'],
    ['\u{e0041}café • 12 😀', 'café • 12 😀'],
    ['\u200b', ''],
    ['', ''],
  ])('%j', (text, seen) => expect(visible(text).text).toBe(seen));

  it('leads back to where it stands', () => {
    const text = 'No.\u200b KD37\u200b2118\u200b.';
    const seen = visible(text);
    const start = seen.text.indexOf('KD');
    const span = seen.toOriginal(start, start + 8);
    expect(text.slice(span.start, span.end)).toBe('KD37\u200b2118');
  });
});
