import { describe, expect, it } from 'vitest';
import { EntriesByRef } from '../../../../src/pack/compile/entries-by-ref';

function known(made: string[] = []) {
  const pack = (id: string, ...ids: string[]) => ({
    pack: id,
    all: { ids: { length: ids.length, at: (place: number) => ids[place]!, all: () => ids } },
    make: (place: number) => {
      made.push(`${id}/${ids[place]}`);
      return { name: `${id} ${ids[place]}` };
    },
  });
  return new EntriesByRef([pack('one', 'a', 'b'), pack('one-more', 'a'), pack('none')]);
}

describe('entries of several packs', () => {
  it('are found by their reference, which names the pack', () => {
    const entries = known();
    expect(['one/b', 'one-more/a'].map((ref) => entries.get(ref)?.name)).toEqual(['one b', 'one-more a']);
    for (const ref of ['a', 'one', 'one/', 'one/c', '/a', 'one/a/b', 'more/a', 'none/a', 'two/a']) {
      expect(entries.get(ref)).toBeUndefined();
      expect(entries.has(ref)).toBe(false);
    }
  });

  it('are made when they are asked for, once', () => {
    const made: string[] = [];
    const entries = known(made);
    expect(entries.has('one/a')).toBe(true);
    expect([...entries.keys()]).toEqual(['one/a', 'one/b', 'one-more/a']);
    expect(entries.size).toBe(3);
    expect(made).toEqual([]);
    expect(entries.get('one/b')).toBe(entries.get('one/b'));
    expect(made).toEqual(['one/b']);
  });

  it('stand in the order of packs and places, however one walks', () => {
    const entries = known();
    const names = [...entries.values()].map(({ name }) => name);
    expect(names).toEqual(['one a', 'one b', 'one-more a']);
    expect([...entries].map(([ref, { name }]) => `${ref}: ${name}`)[2]).toBe('one-more/a: one-more a');
    const told: string[] = [];
    entries.forEach((value, ref) => {
      told.push(`${ref}: ${value.name}`);
    });
    expect(told).toHaveLength(3);
    expect(entries.get('one/a')).toBe([...entries.values()][0]);
  });
});
