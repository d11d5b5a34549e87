import { describe, expect, it } from 'vitest';
import { placeEntries } from '../../../../src/sharing/propose/place-entries';

const at = (follows: string | null, entry: string) => ({ entry, follows });

describe('entries find their place', () => {
  it('right after the one that they follow, which may be new itself', () => {
    expect(placeEntries(['a', 'b'], [at('a', 'c'), at('c', 'd'), at(null, 'e')])).toEqual(['e', 'a', 'c', 'd', 'b']);
  });

  it('in the order of their names where several follow one, whoever came first', () => {
    expect(placeEntries(['a'], [at('a', 'z'), at('a', 'y')])).toEqual(['a', 'y', 'z']);
    expect(placeEntries(['a'], [at('a', 'y'), at('a', 'z')])).toEqual(['a', 'y', 'z']);
  });

  it('at the end where nothing is there to follow, and none is lost in a circle', () => {
    expect(placeEntries(['a'], [at('gone', 'y'), at('y', 'x'), at('gone', 'b')])).toEqual(['a', 'b', 'y', 'x']);
    expect(placeEntries(['a'], [at('y', 'z'), at('z', 'y'), at('w', 'w')]).sort()).toEqual(['a', 'w', 'y', 'z']);
  });

  it('however long the chain is', () => {
    const chain = Array.from({ length: 100_000 }, (_, i) => at(i === 0 ? null : String(i - 1), String(i)));
    expect(placeEntries([], chain)).toEqual(chain.map(({ entry }) => entry));
  });
});
