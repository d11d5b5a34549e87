import { describe, expect, it } from 'vitest';
import { cressiter, findingsOf, found } from '../support/demo';

const check = (text: string): string[] => found('made-where', cressiter(text));

describe('where it was made', () => {
  it('not at works that never made the model', () =>
    expect(check('Made at Harrowslade.')).toEqual(['disproved: Made at Harrowslade']));

  it('whoever else worked there', () =>
    expect(check('Made at Harrowslade where my grandfather was a fitter.')).toEqual([
      'disproved: Made at Harrowslade',
    ]));

  it('at the works that made it', () => expect(check('Made at Brindfold.')).toEqual(['agrees: Made at Brindfold']));

  it('the serial’s run knows better than the model', () => {
    const quarrendle = (description: string): string[] =>
      found('made-where', { title: 'Grindlewade Quarrendle sewing machine', description, language: 'en' });
    expect(quarrendle('Made at Brindfold.')).toEqual(['agrees: Made at Brindfold']);
    expect(quarrendle('Made at Harrowslade.')).toEqual(['agrees: Made at Harrowslade']);
    expect(quarrendle('Serial number H1010000. Made at Harrowslade.')).toEqual(['agrees: Made at Harrowslade']);
    expect(quarrendle('Serial number H1010000. Made at Brindfold.')).toEqual(['disproved: Made at Brindfold']);
    const [finding] = findingsOf('made-where', {
      title: 'Grindlewade Quarrendle sewing machine',
      description: 'Serial number H1010000. Made at Brindfold.',
      language: 'en',
    });
    expect(finding?.known.map(({ text }) => text).join()).toMatch(/H1004501 to H1048500.*Harrowslade/);
  });

  it('said in several places it is one finding, with every place', () =>
    expect(
      found('made-where', {
        title: 'Grindlewade Cressiter, made at Harrowslade',
        description: 'It was made at Harrowslade.',
        language: 'en',
      }),
    ).toEqual(['disproved: made at Harrowslade | made at Harrowslade']));

  it.each([
    'Collect from Harrowslade.',
    'Not made at Harrowslade.',
    'I also have one made at Harrowslade.',
    'Probably made at Harrowslade.',
    'Made at home in Thornmoor.',
  ])('is not held against it: %s', (text) => expect(check(text)).toEqual([]));
});
