import { describe, expect, it } from 'vitest';
import { draftName, draftText, isBlank } from '../../../src/session/drafts';
import { draftRoomTexts as texts } from '../../../src/text/catalogue/draft-room';

describe('a draft', () => {
  it('is called by its title, else by the first line of its text', () => {
    expect(draftName({ title: ' Old machine ', description: 'x' })).toBe('Old machine');
    expect(draftName({ title: ' ', description: '\n First line\nsecond' })).toBe('First line');
    expect(draftName({})).toBe(texts.unnamed);
  });

  it('is copied out whole, and empty fields are left out', () => {
    expect(
      draftText({ title: 'Old machine', description: 'Runs.\n\nHeavy. ', priceText: '£80', serialText: 'K 1' }),
    ).toBe('Old machine\n\nRuns.\n\nHeavy.\n\nPrice: £80\nSerial number: K 1\n');
    expect(draftText({ description: 'Runs.' })).toBe('Runs.\n');
  });

  it('is blank while nothing but spaces is written', () => {
    expect(isBlank({ title: ' \n' })).toBe(true);
    expect(isBlank({ priceText: '1' })).toBe(false);
  });
});
