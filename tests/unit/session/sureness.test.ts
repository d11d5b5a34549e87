import { describe, expect, it } from 'vitest';
import { surenessOf } from '../../../src/session/sureness';

describe('how sure something is, in words', () => {
  it.each([
    [1, 'virtually-certain'],
    [0.95, 'very-likely'],
    [0.7, 'likely'],
    [0.5, 'even'],
    [0.2, 'open'],
    [0, 'open'],
  ])('%d is %s', (probability, words) => {
    expect(surenessOf(probability)).toBe(words);
  });
});
