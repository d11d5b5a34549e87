import { describe, expect, it } from 'vitest';
import { readingOf } from './support/reading';

const kinds: Record<string, readonly (string | { title: string; description: string })[]> = {
  item: [
    'Grindlewade Cressiter sewing machine',
    'Old sewing machine with bobbin case and manual',
    'Cressiter, 12 bobbins, manual, controller',
    'Hand crank sewing machine in wooden case',
    'Cressiter sewing machine - looking for a new home',
    { title: 'Cressiter', description: 'We also repair machines, ask. A lovely old sewing machine.' },
  ],
  part: [
    'Bobbin case for Grindlewade Cressiter',
    'Cressiter bobbin case',
    'Class 66 bobbins, fit Ostlewick',
    'Spulenkapsel für Nähmaschine',
    'Sewing machine manual',
  ],
  wanted: [
    'Wanted: Grindlewade Cressiter',
    'Cressiter sewing machine wanted',
    'Looking for a Wendelow',
    'Suche Grindlewade Nähmaschine',
    { title: 'Grindlewade Cressiter', description: 'I am looking for one of these in good order.' },
  ],
  lot: [
    'Job lot of sewing machines',
    'Three sewing machines',
    '5x sewing machines for spares',
    'Cressiter and Wendelow, the pair',
  ],
  service: [
    'Sewing machine repair service',
    'Nähmaschinenreparatur',
    { title: 'Sewing machines', description: 'I repair all old machines. Call out 20 pounds.' },
  ],
};

describe('what is on offer', () => {
  for (const [kind, adverts] of Object.entries(kinds))
    it.each(
      adverts.map((advert) => [typeof advert === 'string' ? advert : `${advert.title}. ${advert.description}`, advert]),
    )(`${kind}: %s`, (_, advert) => {
      const draft = typeof advert === 'string' ? { title: advert, description: '' } : advert;
      const language = /Suche|Nähm|Spulen/.test(draft.title) ? 'de' : 'en';
      expect(readingOf({ language, ...draft }).kind).toBe(kind);
    });

  it('none where there is nothing', () => expect(readingOf({}).kind).toBe('none'));
});
