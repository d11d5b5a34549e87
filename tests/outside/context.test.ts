import { describe, expect, it } from 'vitest';
import { saying } from '../unit/claims/support/reading';
import { readMarked } from './marked-sentence';

/**
 * ConText: Harkema et al., "ConText: An algorithm for determining negation, experiencer, and temporal status from
 * clinical reports", Journal of Biomedical Informatics 42 (2009). Beside negation it asks whose a finding is
 * (experiencer), and whether it is recent, historical or hypothetical. Classes and trigger words are those of the paper,
 * from memory; the sentences are of our trade. A patient's mother there is a seller's mother's machine here.
 */
const subjectOf = (marked: string): string => {
  const quote = marked.slice(marked.indexOf('{') + 1, marked.indexOf('}'));
  const { values, wordings } = saying(marked.replace(/[{}]/g, ''));
  const claim = [...values, ...wordings].find((one) => one.quote.includes(quote));
  return claim?.subject ?? 'nothing claimed';
};

describe('experiencer: somebody else’s', () => {
  it.each([
    ['mother', 'My mother’s machine has {zigzag}.'],
    ['mother', 'My mother had a {zigzag} one.'],
    ['sister’s', 'His sister’s is {cast iron}.'],
    ['a friend', 'A friend has one with {drop feed}.'],
    ['neighbour', 'The neighbour’s has a {free arm}.'],
    ['another', 'I also have a {zigzag} machine.'],
    ['another', 'My other one has {drop feed}.'],
    ['another', 'Swap for a {free arm}.'],
  ])('%s: %s', (_trigger, sentence) => expect(subjectOf(sentence)).toBe('other'));

  it.each(['It is {cast iron}.', 'The machine is {cast iron}.', 'My mother’s old machine. It is {cast iron}.'])(
    'this one’s: %s',
    (sentence) => expect(subjectOf(sentence)).toBe('this'),
  );
});

describe('hypothetical', () => {
  it.each([
    ['if', 'If it had {zigzag} I would keep it.'],
    ['if', 'If it is {cast iron} it will be heavy.'],
    ['should', 'Should it be {cast iron}, bring help.'],
    ['unless', 'Unless it is {cast iron} it will rust.'],
    ['whether', 'Ask me whether it is {cast iron}.'],
  ])('%s: %s', (_trigger, sentence) => expect(readMarked(sentence).stance).toBe('guesses'));
});

describe('uncertain', () => {
  it.each([
    ['may be', 'It may be {cast iron}.'],
    ['possible', 'Possible {cast iron}.'],
    ['possibly', 'Possibly {cast iron}.'],
    ['probably', 'Probably {cast iron}.'],
    ['questionable', 'Questionable {cast iron}.'],
    ['suspected', 'Suspected {cast iron}.'],
    ['perhaps', '{Cast iron} perhaps.'],
    ['I think', 'I think it is {cast iron}.'],
  ])('%s: %s', (_trigger, sentence) => expect(readMarked(sentence).stance).toBe('guesses'));
});

/**
 * Historical has no stance of its own: a machine is cast iron or it isn't. What was so "before" is held against nothing
 * where the words show that it is no longer so, and is like any other claim where they only say since when.
 */
describe('historical', () => {
  const held = (sentence: string): boolean => {
    const { values, wordings } = saying(sentence);
    return [...values, ...wordings].some(({ subject, stance }) => subject === 'this' && stance === 'says');
  };

  it.each(['It used to have {drop feed}.', 'It previously had a {rotary hook}.', 'It had a {free arm} before.'])(
    'no longer so: %s',
    (sentence) => expect(held(sentence.replace(/[{}]/g, ''))).toBe(false),
  );

  it('so since then', () => expect(held('Since 1955 it has been cast iron.')).toBe(true));
});
