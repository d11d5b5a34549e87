import { describe, expect, it } from 'vitest';
import { saying, short } from './support/reading';

const frames = (text: string): string[] => {
  const { values, wordings } = saying(text);
  return short(
    [...values, ...wordings.filter(({ entry }) => /^says/.test(entry.id))].sort((a, b) => a.start - b.start),
  );
};

describe('a part’s feature is not the machine’s', () => {
  it.each([
    ['The case is made of aluminium.', 'aluminium (other)'],
    ['Comes with a cast iron lamp.', 'cast iron (other)'],
  ])('%s', (text, expected) => expect(frames(text)).toEqual([expected]));

  it.each([
    ['The machine is made of cast iron.', 'cast iron'],
    ['Lamp is working and body cast iron.', 'cast iron'],
    ['With case. Cast iron.', 'Cast iron'],
  ])('the machine’s own: %s', (text, expected) => expect(frames(text)).toEqual([expected]));

  it('what is about the very part is about the machine', () =>
    expect(frames('The bobbin is class 15.')).toEqual(['bobbin is class 15']));
});
