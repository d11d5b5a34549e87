import { describe, expect, it } from 'vitest';
import { textPart, tokenAt } from '../../../src/claims/part-text';
import { StanceReader } from '../../../src/claims/stance';

function read(marked: string, language = 'en') {
  const text = marked.replace(/[{}]/g, '');
  const part = textPart('description', text);
  const first = tokenAt(part, marked.indexOf('{'));
  const last = tokenAt(part, marked.indexOf('}') - 2);
  return new StanceReader(part, new Set([language])).at(first, last);
}

describe('a list that an “or” closes is denied as a whole', () => {
  it.each([
    'It has no {zigzag}, drop feed or free arm.',
    'It has no zigzag, {drop feed} or free arm.',
    'It has no zigzag, drop feed or {free arm}.',
    'There is no zigzag, no lamp, {drop feed}, or free arm.',
    'It does not do buttonholes, {zigzag} or stretch stitches.',
    'It is not aluminium, {cast iron} or plastic but wood.',
  ])('%s', (sentence) => expect(read(sentence).stance).toBe('denies'));

  it('in German and French', () => {
    expect(read('Sie hat kein Licht, {Zickzack} oder Freiarm.', 'de').stance).toBe('denies');
    expect(read('Elle n’a pas de lampe, {zigzag} ou bras libre.', 'fr').stance).toBe('denies');
  });

  it('quotes the denial with what it denies', () =>
    expect(read('It has no zigzag, {drop feed} or free arm.')).toMatchObject({
      trigger: 'no',
      denial: { quote: 'no zigzag, drop feed' },
      why: [{ rule: 'denied-list', makes: 'denies', word: 'no' }],
    }));

  it('in telegram style it may be two statements: nothing is claimed', () =>
    expect(read('No motor, {hand crank} or treadle.').stance).toBe('guesses'));
});

describe('other lists are not', () => {
  it.each([
    'No lamp, {cast iron}, heavy.',
    'It has no lamp, {cast iron} and heavy.',
    'It has no lamp, it is {cast iron} or so heavy.',
    'It has no lamp. {Cast iron} or steel.',
    'It has no lamp, but {cast iron} or steel throughout.',
    'It has no lamp that anybody here could make to light up, {cast iron} or not.',
    'It is very heavy, {cast iron} or steel.',
    'It has no lamp, sews {zigzag} or straight.',
    'It has no lamp, the lovely old black family {cast iron} machine or so.',
  ])('%s', (sentence) => expect(read(sentence).stance).not.toBe('denies'));
});

describe('after a word for what is lacking “and” closes a list too, which may end before', () => {
  it.each([
    ['en', 'It lacks lamp, {zigzag} and free arm.', 'guesses'],
    ['en', 'It is lacking lamp, zigzag and {free arm}.', 'guesses'],
    ['de', 'Es fehlen Lampe, {Zickzack} und Freiarm.', 'guesses'],
    ['fr', 'Il manque lampe, {zigzag} et bras libre.', 'guesses'],
    ['en', 'It has no lamp, {zigzag} and free arm.', 'says'],
    ['de', 'Sie hat kein Licht, {Zickzack} und Freiarm.', 'says'],
    ['en', 'It lacks a lamp, {cast iron} and heavy.', 'guesses'],
    ['en', 'It lacks a lamp, it is {cast iron} and heavy.', 'says'],
  ])('%s: %s', (language, sentence, stance) => expect(read(sentence, language).stance).toBe(stance));
});
