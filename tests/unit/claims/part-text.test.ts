import { describe, expect, it } from 'vitest';
import { clauseAt, hasNameCapital, textPart, tokenAt } from '../../../src/claims/part-text';

describe('a text cut into tokens and clauses', () => {
  const part = textPart('description', 'Cast iron, not alloy. Runs well.');
  it('each token stands in its clause', () => {
    const clause = clauseAt(part, tokenAt(part, part.text.indexOf('alloy')));
    expect(part.text.slice(clause?.start, clause?.end)).toContain('not alloy');
    expect(clause?.sentence).toBe(0);
    expect(clauseAt(part, tokenAt(part, part.text.indexOf('well')))?.sentence).toBe(1);
  });
});

describe('a capital that shows a name', () => {
  it.each([
    ['Wendelow', true],
    ['KD', true],
    ['Q', true],
    ['WENDELOW', false],
    ['scissors', false],
    ['SCISSORS', false],
  ])('%s: %s', (word, expected) => expect(hasNameCapital(textPart('description', word), 0)).toBe(expected));
});
