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
  it('one said and the other denied is one', () =>
    expect(frame('Alloy body. Not cast iron.').map(({ said }) => said[0]?.quote)).toEqual(['Alloy body']));
  it('denied alone is one', () => expect(frame('Not cast iron.')).toHaveLength(1));
  it('likened and quoted is none', () => expect(frame('Like an alloy body. Often called aluminium.')).toEqual([]));
});
