import { describe, expect, it } from 'vitest';
import { isDue, nextCheck } from '../../../../src/sharing/subscribe/schedule';

const DAY = 86_400_000;

describe('when a pack is checked again', () => {
  it('is never sooner than a day later, and after failures later still', () => {
    const waits = [0, 1, 2, 3, 4, 50].map((failures) => nextCheck(1_000, failures, 0) - 1_000);
    expect(waits).toEqual([1, 1, 2, 4, 7, 7].map((days) => days * DAY));
  });

  it('is spread over four hours', () => {
    expect(nextCheck(0, 0, 1) - nextCheck(0, 0, 0)).toBe(DAY / 6);
  });

  it('comes when it is due, and not before', () => {
    const due = nextCheck(0, 0, 0.5);
    expect(isDue(due - 1, due)).toBe(false);
    expect(isDue(due, due)).toBe(true);
  });

  it('doesn’t wait for years where the clock was wrong when it was set', () => {
    expect(isDue(0, nextCheck(400 * DAY, 0, 0))).toBe(true);
  });
});
