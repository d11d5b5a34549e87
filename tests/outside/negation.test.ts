import { describe, expect, it } from 'vitest';
import { readMarked } from './marked-sentence';

/**
 * The method of Chapman et al., "A simple algorithm for identifying negated findings and diseases in discharge
 * summaries", Journal of Biomedical Informatics 34 (2001). The classes of triggers are those of the paper, and so are
 * the trigger words named in front of each sentence and the shapes of the sentences ("The patient denies chest pain but
 * has …", "no fever, cough or chills"); all of them from memory, with a finding of our trade in the place of a
 * patient's.
 */
const stanceOf = (marked: string): string => readMarked(marked).stance;

describe('triggers before what they negate', () => {
  it.each([
    ['no', 'no {zigzag}'],
    ['not', 'It is not {cast iron}.'],
    ['without', 'without {drop feed}'],
    ['free of', 'free of {rust}'],
    ['never', 'never a {zigzag} machine'],
    ['never had', 'It never had a {free arm}.'],
    ['cannot', 'It cannot {zigzag}.'],
    ['no sign of', 'There is no sign of {zigzag}.'],
    ['no evidence of', 'There is no evidence of a {drop feed}.'],
    ['no suggestion of', 'No suggestion of {cast iron}.'],
    ['not appear', 'It does not appear to have {drop feed}.'],
    ['neither', 'Neither {cast iron} nor alloy.'],
    ['nor', 'Neither alloy nor {cast iron}.'],
  ])('%s: %s', (_trigger, sentence) => expect(stanceOf(sentence)).toBe('denies'));
});

describe('triggers after what they negate', () => {
  it.each([
    ['is missing', 'The {free arm} is missing.'],
    ['not included', 'The {zigzag} is not included.'],
    ['no, as an answer', '{Zigzag}: no'],
    ['none, as an answer', '{Drop feed}: none.'],
    ['was ruled out', '{Cast iron} was ruled out.'],
    ['absent', 'The {free arm} is absent.'],
  ])('%s: %s', (_trigger, sentence) => expect(stanceOf(sentence)).toBe('denies'));

  it('unlikely: weaker than a denial here', () => expect(stanceOf('{Zigzag} unlikely.')).toBe('guesses'));
});

describe('phrases that look like triggers and negate nothing', () => {
  it.each([
    ['not only', 'Not only {cast iron}, heavy too.'],
    ['no doubt', 'No doubt {cast iron}.'],
    ['no problem', 'No problem with the {zigzag}.'],
    ['no change', 'No change to the {cast iron} body.'],
    ['without difficulty', 'Without difficulty it sews {zigzag}.'],
    ['no wonder', 'No wonder, it is {cast iron}.'],
  ])('%s: %s', (_trigger, sentence) => expect(stanceOf(sentence)).toBe('says'));

  it.each([
    'Not certain if it is {cast iron}.',
    'Not certain whether it is {cast iron}.',
    'Not necessarily {cast iron}.',
  ])('neither said nor denied: %s', (sentence) => expect(stanceOf(sentence)).toBe('guesses'));
});

describe('words that end a trigger’s reach', () => {
  it.each([
    ['but', 'No lamp, but {cast iron}.'],
    ['but', 'It is not pretty but {cast iron}.'],
    ['however', 'Not new, however {cast iron}.'],
    ['nevertheless', 'No lamp nevertheless {cast iron}.'],
    ['yet', 'No lamp yet {cast iron}.'],
    ['though', 'No lamp though {cast iron}.'],
    ['although', 'No motor, although the {drop feed} works.'],
    ['still', 'No lamp, still {cast iron}.'],
    ['apart from', 'No lamp apart from this {cast iron}.'],
    ['aside from', 'No lamp aside from that {cast iron}.'],
    ['except', 'No lamp except that it is {cast iron}.'],
    ['which', 'No lamp, which is {cast iron}.'],
    ['the sentence’s end', 'It has no case. {Cast iron}.'],
  ])('%s: %s', (_word, sentence) => expect(stanceOf(sentence)).toBe('says'));
});

describe('the window', () => {
  it('a trigger governs the words near it, not those at the other end of a long clause', () =>
    expect(stanceOf('No lamp on this very old and much loved family machine of {cast iron}.')).not.toBe('denies'));

  it('a list is denied together: “no fever, cough or chills”', () => {
    for (const sentence of [
      'It does not have {zigzag} or drop feed.',
      'It does not have zigzag or {drop feed}.',
      'It has no {zigzag}, drop feed or free arm.',
      'It has no zigzag, {drop feed} or free arm.',
      'It has no zigzag, drop feed or {free arm}.',
    ])
      expect([sentence, stanceOf(sentence)]).toEqual([sentence, 'denies']);
  });
});

describe('where adverts differ from discharge summaries, on purpose', () => {
  it('a comma without “or” ends a denial: in telegram style what follows is said', () =>
    expect(stanceOf('No lamp, {cast iron}, heavy.')).toBe('says'));

  it('an “and” after a short denial leaves it open', () =>
    expect(stanceOf('No lamp and {cast iron}.')).toBe('guesses'));
});
