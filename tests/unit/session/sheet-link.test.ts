import { describe, expect, it } from 'vitest';
import { sheetInLink, sheetLink } from '../../../src/session/sheet-link';

describe('the anchor of a viewing sheet', () => {
  it('names the page, whatever stands in its address', () => {
    for (const about of ['https://market.example/a?b=c&about=d#e', 'https://x.example/ü %20"<'])
      expect(sheetInLink(sheetLink(about))).toBe(about);
  });

  it('is no other room’s, and nothing without a page', () => {
    for (const anchor of ['', '#sheets', '#sheets?about=', '#prices?about=x', `#sheets?about=${'x'.repeat(4_001)}`])
      expect(sheetInLink(anchor)).toBeNull();
  });
});
