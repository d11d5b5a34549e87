import { describe, expect, it } from 'vitest';
import { explained, of } from './support';

describe('what was found and claims nothing', () => {
  it.each([
    ['Class 15', 'Class 15 bobbins.', 'value: inside-longer (Class 15 bobbins)'],
    ['table', 'The table is of oak.', 'part: shows-part'],
    ['sewing machine', 'A sewing machine.', 'thing: shows-thing'],
    ['zigzag foot', 'With a zigzag foot.', 'unless: shows-harmless'],
    ['30 cm', 'The board is 30 cm.', 'measure: nothing-measured'],
    ['Brindfold', 'I live in Brindfold.', 'place: no-word-for-making'],
    ['41', 'I have 41 of them.', 'name: not-a-name'],
    ['gusseisern', 'gusseisern', 'caution: another-language'],
  ])('%s in %j', (quote, text, expected) => expect(of(quote, text)).toContain(expected));

  it('a pack that doesn’t cover the advert says nothing, and says so', () => {
    const { phrases } = explained({ title: 'Cast iron garden bench', description: 'Rare. Made at Brindfold.' });
    expect(phrases.length).toBeGreaterThan(0);
    expect(phrases.every(({ reason }) => reason === 'pack-not-covering')).toBe(true);
  });

  it('the same words of two languages are told once', () => {
    expect(of('zigzag', 'It does a zigzag.').filter((line) => line.includes('another-language'))).toEqual([]);
  });

  it('a number of something else is no serial', () => {
    const lines = of('KD372118', 'The other machine has serial number KD372118.');
    expect(lines.join()).toMatch(/^serial: /);
    expect(lines).not.toContain('serial: serial-model agrees');
  });
});
