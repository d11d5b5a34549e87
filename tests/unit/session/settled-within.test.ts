import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { settledWithin } from '../../../src/session/settled-within';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

async function isDone(waited: Promise<void>): Promise<boolean> {
  let done = false;
  void waited.then(() => {
    done = true;
  });
  await vi.advanceTimersByTimeAsync(0);
  return done;
}

it('waits for the work', async () => {
  let finish = () => {};
  const waited = settledWithin(new Promise<void>((resolve) => (finish = resolve)), 100);
  await vi.advanceTimersByTimeAsync(99);
  expect(await isDone(waited)).toBe(false);
  finish();
  expect(await isDone(waited)).toBe(true);
  expect(vi.getTimerCount()).toBe(0);
});

it('is done with work that failed', async () => {
  expect(await isDone(settledWithin(Promise.reject(new Error('no')), 100))).toBe(true);
});

it('waits no longer than it was told', async () => {
  const waited = settledWithin(new Promise(() => {}), 100);
  expect(await isDone(waited)).toBe(false);
  await vi.advanceTimersByTimeAsync(100);
  expect(await isDone(waited)).toBe(true);
});
