import { describe, expect, it } from 'vitest';
import { draftName, draftsFollowed, draftText, isBlank } from '../../../src/session/drafts';
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

describe('drafts that another window changes', () => {
  const draft = (id: string, title: string, changedAt = '2026-06-01T10:00:00.000Z') => ({
    id,
    draft: { title },
    changedAt,
  });
  const shown = [draft('new', ''), draft('a', 'A'), draft('b', 'B')];
  const titles = (drafts: ReturnType<typeof draftsFollowed>) =>
    drafts.map(({ id, draft: { title } }) => `${id} ${title}`);

  it('are shown as they are kept by now, in that order', () => {
    const kept = [draft('c', 'C'), draft('b', 'B, changed')];
    expect(titles(draftsFollowed(shown, kept, new Map()))).toEqual(['new ', 'c C', 'b B, changed']);
  });

  it('never take away what is being typed here, changed or removed there', () => {
    const typed = new Map([['b', draft('b', 'B, typed')]]);
    expect(titles(draftsFollowed(shown, [draft('b', 'B, changed')], typed))).toEqual(['new ', 'b B, typed']);
    expect(titles(draftsFollowed(shown, [], typed))).toEqual(['new ', 'b B, typed']);
  });
});
