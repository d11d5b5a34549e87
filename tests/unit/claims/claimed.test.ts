import { describe, expect, it } from 'vitest';
import type { Draft } from '../../../src/listing/types';
import { readingOf } from './support/reading';

const claimed = (draft: Draft): string[] => readingOf(draft).claimedModels.map((model) => model.id);
const family = (draft: Draft): string | undefined => readingOf(draft).claimedFamily?.def.id;

describe('the model that claims are held against', () => {
  it.each<[Draft, string]>([
    [{ title: 'Grindlewade Cressiter', description: 'Lighter than it is the Wendelow.' }, 'cressiter'],
    [{ title: 'Old sewing machine', description: 'It is a Grindlewade Wendelow.' }, 'wendelow'],
    [{ title: 'Sewing machine', description: 'I think it is a Cressiter.' }, 'cressiter'],
    [{ title: 'Sewing machine', description: 'Sold to me as a Cressiter.' }, 'cressiter'],
    [{ title: 'Cresiter, also written Cressiter', description: '' }, 'cressiter'],
  ])('%o', (draft, expected) => expect(claimed(draft)).toEqual([expected]));

  it.each<Draft>([
    { title: 'Old sewing machine', description: 'It could be a Cressiter.' },
    { title: 'Sewing machine', description: 'A Cressiter? Or is it the Wendelow?' },
    { title: 'Sewing machine', description: 'Not a Cressiter.' },
    { title: 'Sewing machine', description: 'Much like a Cressiter.' },
    { title: 'Sewing machine', description: 'I also have a Cressiter.' },
  ])('none: %o', (draft) => expect(claimed(draft)).toEqual([]));
});

describe('the family', () => {
  it('is the model’s, else the one that is named', () => {
    expect(family({ title: 'Fildercott Senior', description: '' })).toBe('fildercott');
    expect(family({ title: 'Grindlewade sewing machine', description: '' })).toBe('grindlewade');
    expect(family({ title: 'Old sewing machine', description: '' })).toBeUndefined();
  });
});
