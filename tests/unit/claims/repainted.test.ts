import { describe, expect, it } from 'vitest';
import { readingOf } from './support/reading';

const asides = (title: string, description: string): (boolean | undefined)[] =>
  readingOf({ title, description, language: 'en' })
    .values.filter(({ field, attribute }) => field === 'title' && attribute.id === 'frame')
    .map(({ aside }) => aside);

describe('a colour that somebody put there', () => {
  it.each(['I sprayed her aluminium last year.', 'My brother painted it aluminium.'])('disproves nothing: %s', (text) =>
    expect(asides('Grindlewade Cressiter, aluminium', text)).toEqual([true]),
  );
  it('of which nothing is told is the first one', () =>
    expect(asides('Grindlewade Cressiter, aluminium', 'I painted its table white.')).toEqual([undefined]));
});
