import { describe, expect, it } from 'vitest';
import { cressiter, found } from '../support/demo';

const check = (text: string): string[] => found('wording', cressiter(text));

describe('words that packs weigh by themselves', () => {
  it('some are true of no model of the pack', () =>
    expect(check('An industrial machine.')).toContainEqual(expect.stringMatching(/^disproved: industrial/)));
  it('some are only to be minded', () => expect(check('Heavy duty.')).toEqual(['caution: Heavy duty']));
  it('said twice they are one finding', () =>
    expect(check('Heavy duty. Really heavy duty.')).toEqual(['caution: Heavy duty | heavy duty']));
  it.each([
    'Not an industrial machine.',
    'As strong as an industrial machine.',
    'Often called industrial.',
    'I also have an industrial machine.',
  ])('not where they aren’t said of it: %s', (text) =>
    expect(check(text).filter((line) => line.startsWith('disproved'))).toEqual([]),
  );
  it('not of what is known to be so', () => {
    const compact = (title: string): string[] => found('wording', { title, description: 'Compact.', language: 'en' });
    expect(compact('Grindlewade Haddercombe sewing machine')).toEqual([]);
    expect(compact('Old sewing machine')).toEqual(['caution: Compact']);
  });
  it('another check that decides the same words speaks alone', () => {
    const both = cressiter('Lightweight.');
    expect(found('weight', both)).toEqual(['disproved: Lightweight']);
    expect(found('wording', both)).toEqual([]);
  });
});
