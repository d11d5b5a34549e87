import { describe, expect, it } from 'vitest';
import { findingsOf } from './support/demo';

const frame = (description: string) =>
  findingsOf('claim-fact', { title: 'Grindlewade Cressiter', description, language: 'en' }).filter(
    ({ attribute }) => attribute === 'frame',
  );

describe('what the advert asserts of a feature', () => {
  it('said twice is one assertion with both places', () => {
    const [finding, ...more] = frame('Alloy body. I repeat: alloy body.');
    expect(more).toEqual([]);
    expect(finding?.said.map(({ quote }) => quote)).toEqual(['Alloy body', 'alloy body']);
  });
  it('said and denied are two', () => expect(frame('Alloy body. Not cast iron.')).toHaveLength(2));
  it('likened and quoted is none', () => expect(frame('Like an alloy body. Often called aluminium.')).toEqual([]));
});
