import { describe, expect, it } from 'vitest';
import { ofAnother } from '../../../src/claims/other-thing';
import { saying } from './support/reading';

describe('how words came to their stance and subject', () => {
  const why = (text: string, quote: string) => {
    const { values, wordings } = saying(text);
    const claim = [...values, ...wordings].find((one) => one.quote.toLowerCase() === quote)!;
    return claim.why?.map(({ rule, makes, word }) => `${rule} ${makes} ${word}`);
  };

  it.each([
    ['It is not cast iron.', 'cast iron', ['trigger denies is not']],
    ['Not without a zigzag.', 'zigzag', ['trigger denies Not', 'denied-twice says null']],
    ['I also have a zigzag.', 'zigzag', ['trigger other I also have']],
    ['The table is cast iron.', 'cast iron', ['part other table']],
    ['Is it cast iron?', 'cast iron', ['trigger guesses Is it']],
    ['As quiet as a rotary hook.', 'rotary hook', ['trigger likens As quiet as']],
    ["What it can't do: zigzag, drop feed.", 'drop feed', ['lacking-list denies null']],
    ['❌ zigzag', 'zigzag', ['crossed denies null']],
    ['It is as nimble as a rotary hook.', 'rotary hook', ['compared likens null']],
    ['"It has a proper zigzag on it."', 'zigzag', ['quoted quotes null']],
    ['It is cast iron.', 'cast iron', undefined],
  ])('%s', (text, quote, expected) => {
    expect(why(text, quote)).toEqual(expected);
  });

  it('keeps what was decided before, and the trigger where no word decided', () => {
    const claim = {
      subject: 'this',
      trigger: 'may be',
      why: [{ rule: 'trigger', makes: 'guesses', word: 'may be' }],
    } as const;
    expect(ofAnother<{ subject: 'this' | 'other'; trigger: string | null }>(claim, 'other-model')).toEqual({
      subject: 'other',
      trigger: 'may be',
      why: [...claim.why, { rule: 'other-model', makes: 'other', word: null }],
    });
    expect(ofAnother(claim as never, 'noun', 'thread')).toMatchObject({ subject: 'other', trigger: 'thread' });
  });
});
