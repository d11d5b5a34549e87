import { describe, expect, it } from 'vitest';
import { came, explained, of } from './support';

const lines = (draft: Parameters<typeof explained>[0], quote: string): string[] =>
  explained(draft)
    .phrases.filter((phrase) => phrase.quote === quote)
    .map((phrase) => `${phrase.what}: ${came(phrase)}`);

describe('why nothing came of a claim', () => {
  it('in an advert for a part only what it fits is looked at', () =>
    expect(lines({ title: 'Bobbin case for Cressiter', description: 'Made in 1955.' }, '1955')).toEqual([
      'year: advert-kind',
    ]));

  it('no model to hold it against', () =>
    expect(lines({ title: 'Sewing machine', description: 'Only 200 ever made.' }, 'Only 200 ever made')).toEqual([
      'count: no-model',
    ]));

  it('no date is known that decides it', () =>
    expect(lines({ title: 'Sewing machine', description: 'Over 100 years old.' }, 'Over 100 years old')).toEqual([
      'age: undated',
    ]));

  it('what is known allows it', () =>
    expect(of('Only 300000 ever made', 'Only 300000 ever made.')).toEqual(['count: facts-allow']));

  it('a guess about what is so anyway', () =>
    expect(of('rotary hook', 'Perhaps a rotary hook.')).toContain('value: guessed'));

  it('a denied word is no word', () => expect(of('Victorian', 'It isn’t Victorian.')).toContain('wording: denied'));

  it('a guessed year', () => expect(of('1901', 'I think it was made in 1901.')).toEqual(['year: guessed']));

  it('more than the machine was weighed', () =>
    expect(of('17 kg', 'In its case it weighs 17 kg.')).toContain('measure: with-more'));

  it('another serial decides', () =>
    expect(lines({ title: 'Grindlewade Cressiter', serialText: 'KD372118, KD372119' }, 'KD372119')).toEqual([
      'serial: not-deciding',
    ]));

  it('a maker’s name, and a name that is not the one on sale', () => {
    expect(lines({ title: 'Grindlewade Cressiter' }, 'Grindlewade')).toContain('name: maker-named');
    expect(lines({ title: 'Grindlewade Cressiter', description: 'Often called Wendelow.' }, 'Wendelow')).toContain(
      'name: quoted',
    );
  });
});
