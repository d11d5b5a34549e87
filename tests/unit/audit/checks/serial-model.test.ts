import { describe, expect, it } from 'vitest';
import { cressiter, findingsOf, found } from '../support/demo';

const check = (text: string): string[] => found('serial-model', cressiter(text));

describe('was the serial allotted to the model that the advert names?', () => {
  it('no: both halves are shown', () => {
    expect(check('Serial number KD330000.')).toEqual(['disproved: Cressiter | KD330000']);
    const [finding] = findingsOf('serial-model', cressiter('Serial number KD330000.'));
    expect(finding?.known.map(({ entry, text }) => [entry.length > 0, text])).toEqual([
      [true, 'Numbers KD322001 to KD343000 were allotted to Grindlewade Wendelow in 1954, Brindfold.'],
    ]);
  });

  it('yes', () => expect(check('Serial number KD372118.')).toEqual(['agrees: Cressiter | KD372118']));

  it('yes, where the block was shared by two models', () =>
    expect(check('Serial number KD225000.')).toEqual(['agrees: Cressiter | KD225000']));

  it('a serial in a gap of the tables says nothing', () => expect(check('Serial number KD297000.')).toEqual([]));

  it('a guessed name is only a question', () =>
    expect(
      found('serial-model', {
        title: 'Grindlewade sewing machine',
        description: 'I think it is a Cressiter. Serial number KD330000.',
        language: 'en',
      }),
    ).toEqual(['unproved: Cressiter | KD330000']));

  it('where no model is named, there is nothing to hold the serial against', () =>
    expect(
      found('serial-model', { title: 'Old sewing machine', description: 'Serial number KD330000.', language: 'en' }),
    ).toEqual([]));

  it('the number of another machine is not held against this one', () =>
    expect(check('I also have a Wendelow with serial number KD330000.')).toEqual([]));
});
