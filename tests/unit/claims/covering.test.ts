import { describe, expect, it } from 'vitest';
import { readingOf } from './support/reading';

const covering = (title: string, description = ''): string[] => [...readingOf({ title, description }).covering].sort();

describe('which packs speak of an advert', () => {
  it('the club’s and the one it extends, where a name of the club’s stands', () =>
    expect(covering('Cressiter')).toEqual(['grindlewade-circle', 'trade']));

  it('the trade’s alone, where only the thing is named', () => expect(covering('Sewing machine')).toEqual(['trade']));

  it.each(['Oak table and lamp', 'Motor for a boat', 'Bicycle, cast iron, Victorian', 'Needle felting kit'])(
    'none: %s',
    (title) => expect(covering(title)).toEqual([]),
  );

  it.each(['Sewing machine, not a Cressiter', 'Sewing machine, much like a Cressiter'])(
    'a name that is denied or likened shows nothing: %s',
    (title) => expect(covering(title)).toEqual(['trade']),
  );
});
