import { describe, expect, it } from 'vitest';
import { textPart, tokenAt } from '../../src/claims/part-text';
import { StanceReader } from '../../src/claims/stance';

/**
 * The method of Chapman et al., "A simple algorithm for identifying negated findings and diseases in discharge
 * summaries", Journal of Biomedical Informatics 34 (2001), and of Harkema et al., "ConText", in the same, 42 (2009).
 * The classes of triggers are those of the papers and some of their trigger words are used below, all from memory; the
 * sentences are of our trade and our own.
 */
function read(marked: string): { stance: string; subject: string } {
  const text = marked.replace(/[{}]/g, '');
  const part = textPart('description', text);
  const first = tokenAt(part, marked.indexOf('{'));
  const last = tokenAt(part, marked.indexOf('}') - 2);
  return new StanceReader(part, new Set(['en'])).at(first, last);
}

const stanceOf = (marked: string): string => read(marked).stance;

describe('triggers before what they negate', () => {
  it.each([
    'no {zigzag}',
    'It is not {cast iron}.',
    'without {drop feed}',
    'free of {rust}',
    'never a {zigzag} machine',
  ])('%s', (sentence) => expect(stanceOf(sentence)).toBe('denies'));
});

describe('triggers after what they negate', () => {
  it.each(['The {free arm} is missing.', 'The {zigzag} is not included.', '{Zigzag}: no'])('%s', (sentence) =>
    expect(stanceOf(sentence)).toBe('denies'),
  );
});

describe('phrases that look like triggers and negate nothing', () => {
  it.each(['Not only {cast iron}, heavy too.', 'No doubt {cast iron}.', 'No problem with the {zigzag}.'])(
    '%s',
    (sentence) => expect(stanceOf(sentence)).toBe('says'),
  );
});

describe('words that end a trigger’s reach', () => {
  it.each([
    'No lamp, but {cast iron}.',
    'It is not pretty but {cast iron}.',
    'No motor, although the {drop feed} works.',
    'Not new, however {cast iron}.',
    'It has no case. {Cast iron}.',
  ])('%s', (sentence) => expect(stanceOf(sentence)).toBe('says'));

  it('a list is denied together until something ends it', () => {
    expect(stanceOf('It does not have {zigzag} or drop feed.')).toBe('denies');
    expect(stanceOf('It does not have zigzag or {drop feed}.')).toBe('denies');
  });
});

describe('the window', () => {
  it('a trigger governs the words near it, not those at the other end of a long clause', () =>
    expect(stanceOf('No lamp on this very old and much loved family machine of {cast iron}.')).not.toBe('denies'));
});

describe('what else ConText tells: is it of this one, and is it sure?', () => {
  it.each(['I also have a {zigzag} machine.', 'My other one has {drop feed}.', 'Swap for a {free arm}.'])(
    'another’s: %s',
    (sentence) => expect(read(sentence).subject).toBe('other'),
  );
  it.each(['It may be {cast iron}.', 'Possibly {cast iron}.', 'I think it is {cast iron}.'])(
    'not sure: %s',
    (sentence) => expect(stanceOf(sentence)).toBe('guesses'),
  );
  it('this one’s, and sure', () =>
    expect(read('It is {cast iron}.')).toMatchObject({ stance: 'says', subject: 'this' }));
});
