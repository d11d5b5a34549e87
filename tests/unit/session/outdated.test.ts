import { describe, expect, it } from 'vitest';
import { saysOutdated } from '../../../src/session/outdated';

describe('what a call of a page fails with', () => {
  it('tells a program that is gone from any other failure', () => {
    expect(saysOutdated(new Error('Extension context invalidated.'))).toBe(true);
    expect(saysOutdated('Uncaught Error: Extension context invalidated.')).toBe(true);
    for (const other of [new TypeError('Failed to fetch'), 'no receiving end', null, undefined])
      expect(saysOutdated(other)).toBe(false);
  });
});
