import { describe, expect, it } from 'vitest';
import { accepted, fitted, LARGEST_PHOTO, MOST_PHOTOS } from '../../../src/session/own-photos';

const file = (name: string, size = 1) => ({ name, size });

describe('own photos', () => {
  it('are drawn in proportion, never larger than they are, never with a side of nought', () => {
    expect(fitted(4000, 3000, 1600)).toEqual({ width: 1600, height: 1200 });
    expect(fitted(3000, 4000, 1600)).toEqual({ width: 1200, height: 1600 });
    expect(fitted(800, 600, 1600)).toEqual({ width: 800, height: 600 });
    expect(fitted(100_000, 1, 1600)).toEqual({ width: 1600, height: 1 });
  });

  it('are taken while there is room, and files that are too large are named', () => {
    const chosen = [file('a'), file('huge', LARGEST_PHOTO + 1), file('b'), file('c')];
    expect(accepted(chosen, MOST_PHOTOS - 2)).toEqual({
      files: [file('a'), file('b')],
      troubles: [
        { why: 'large', name: 'huge' },
        { why: 'many', name: 'c' },
      ],
    });
    expect(accepted([file('a')], MOST_PHOTOS + 3).files).toEqual([]);
  });
});
