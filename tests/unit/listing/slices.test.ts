import { describe, expect, it } from 'vitest';
import { atOnce, inSlices } from '../../../src/listing/slices';

/** Work that takes so many milliseconds between two yields, by a clock of its own. */
function working(each: number[]) {
  const time = { now: 0, done: 0 };
  const work = function* (): Generator<void, string> {
    for (const milliseconds of each) {
      time.now += milliseconds;
      time.done++;
      yield;
    }
    return 'done';
  };
  return { time, work: work() };
}

describe('work in slices', () => {
  it('lets others through each time that a slice is over, and not before', async () => {
    const { time, work } = working([10, 10, 10, 3, 40, 1, 1]);
    const pauses: number[] = [];
    const answer = await inSlices(work, {
      slice: 25,
      now: () => time.now,
      pause: async () => {
        pauses.push(time.done);
        // What the others take is not this work's.
        time.now += 1000;
      },
    });
    expect(answer).toBe('done');
    expect(pauses).toEqual([3, 5]);
  });

  it('takes no pause where it is done within one', async () => {
    const { time, work } = working([1, 2]);
    const never = () => Promise.reject(new Error('paused'));
    expect(await inSlices(work, { slice: 25, now: () => time.now, pause: never })).toBe('done');
  });

  it('is done at once where nobody waits', () => {
    expect(atOnce(working([50, 50]).work)).toBe('done');
  });

  it('throws what the work throws', async () => {
    const failing = function* (): Generator<void, string> {
      yield;
      throw new Error('out of thread');
    };
    await expect(inSlices(failing())).rejects.toThrow('out of thread');
  });
});
