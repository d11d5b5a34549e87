import { describe, expect, it } from 'vitest';
import { cressiter, found } from '../support/demo';

const check = (text: string): string[] => found('made-where', cressiter(text));

describe('where it was made', () => {
  it('not at works that never made the model', () =>
    expect(check('Made at Harrowslade.')).toEqual(['disproved: Made at Harrowslade']));

  it('at the works that made it', () => expect(check('Made at Brindfold.')).toEqual(['agrees: Made at Brindfold']));

  it('the serial’s run knows better than the model', () => {
    const quarrendle = (description: string): string[] =>
      found('made-where', { title: 'Grindlewade Quarrendle sewing machine', description, language: 'en' });
    expect(quarrendle('Made at Brindfold.')).toEqual(['agrees: Made at Brindfold']);
    expect(quarrendle('Made at Harrowslade.')).toEqual(['agrees: Made at Harrowslade']);
  });

  it.each([
    'Collect from Harrowslade.',
    'Not made at Harrowslade.',
    'I also have one made at Harrowslade.',
    'Probably made at Harrowslade.',
    'Made at home in Thornmoor.',
  ])('is not held against it: %s', (text) => expect(check(text)).toEqual([]));
});
