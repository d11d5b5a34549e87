import { describe, expect, it } from 'vitest';
import { textPart } from '../../../src/claims/part-text';
import { titleNames } from '../../../src/claims/title-names';
import { readingOf } from './support/reading';

const named = (title: string): string[] => [...titleNames(textPart('title', title), [], [])];

describe('what a title calls the thing', () => {
  it.each<[string, string[]]>([
    ['Thistlemarch treadle sewing machine in its table', ['thistlemarch']],
    ['Sewing machine by Thistlemarch, with oak case and key', ['sewing', 'thistlemarch']],
    ['THISTLEMARCH TREADLE', []],
    ['Thistlemarch Treadle Sewing Machine', []],
    ['treadle', []],
  ])('%s', (title, names) => expect(named(title)).toEqual(names));

  it('a feature before such a name is the thing’s', () => {
    const description = 'A full-size Thistlemarch on its stand, in an oak table.';
    const [claim] = readingOf({ title: 'Thistlemarch treadle sewing machine in its table', description }).values.filter(
      ({ field, attribute }) => field === 'description' && attribute.id === 'size',
    );
    expect(claim).toMatchObject({ quote: 'full-size', subject: 'this' });
  });
});
