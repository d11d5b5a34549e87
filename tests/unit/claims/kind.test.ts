import { describe, expect, it } from 'vitest';
import { readingOf } from './support/reading';

const kinds: Record<string, readonly (string | { title: string; description: string; language?: string })[]> = {
  item: [
    'Grindlewade Cressiter sewing machine',
    'Swap my Cressiter for a Haddercombe',
    'Trade: Cressiter for treadle irons?',
    'Old sewing machine for sale with case',
    'Old sewing machine with bobbin case and manual',
    'Cressiter, 12 bobbins, manual, controller',
    'Hand crank sewing machine in wooden case',
    'Cressiter sewing machine - looking for a new home',
    'Cressiter (motor needs rewiring)',
    'Cressiter for repair, cleaning overdue',
    'We moved house: Grindlewade Cressiter',
    'Cressiter, recently serviced',
    'Haddercombe sewing machine spares or repair',
    'Wendelow without its lid',
    'Cressiter on treadle table',
    'Grindlewade Pellucket small hand crank',
    'One of my two machines must go: Cressiter',
    'Cressiter 10x7',
    { title: 'Grindlewade Cressiter', description: 'Two Cressiters in the shop. This one is KD 372118.' },
    { title: 'Cressiter treadle cabinet', description: 'Grindlewade Cressiter, cast iron. KD 372118.' },
    { title: 'Cressiter', description: 'We also repair machines, ask. A lovely old sewing machine.' },
    { title: 'Old sewing machine', description: 'Repaired by a man with 30 years in the trade.' },
    { title: 'Old sewing machine', description: 'I can bring it to you, cleaned and set up.' },
    { title: 'Cressiter', description: 'Perfect for sewing in your own home.' },
    { title: 'Cressiter with case', description: "I'm after a quick sale." },
    { title: 'Cressiter with case', description: 'There is no machine oil in the can.' },
    { title: 'Old sewing machine with bobbin case', description: 'A shop said: no machine, a wreck. It runs.' },
    { title: 'Cressiter', description: 'Brought back to life last winter.' },
    { title: 'Cressiter', description: 'If you need delivery I can help with that. Serial KD 372118. £60.' },
  ],
  part: [
    'Box of sewing machine bits',
    'Bag of 25 small steel bobbins, Cressiter',
    'Lot of 10 bobbins for Cressiter',
    'Lot 10 bobbins for Cressiter',
    'Bobbin case for Grindlewade Cressiter',
    'Cressiter bobbin case',
    'Class 66 bobbins, fit Ostlewick',
    'Instruction book Ulversholt Q 41',
    'Needle plate Cressiter',
    'Spulenkapsel für Nähmaschine',
    'Sewing machine manual',
    'Quarrendle shuttle and 3 bobbins',
    'Lamp for a Cressiter',
    { title: '10 x class 66 bobbins', description: 'For the Ostlewick. New old stock.' },
    { title: 'Lot de 8 canettes pour Haddercombe', description: 'Huit canettes, neuves.', language: 'fr' },
    {
      title: 'Ulversholt Q 41 motor and pedal, two pin',
      description: 'Motor, bracket and belt from a Q 41 that broke.',
    },
    { title: 'Cressiter motor and pedal', description: 'Both work. No machine, just what you see.' },
    'Grindlewade treadle irons only, no machine',
    'Breaking Grindlewade Cressiter for spares',
    'Lid for a Cressiter / 14 inch machines',
    { title: 'Foot controller', description: 'Came off a Q 43. Fits the Q 45 as well.' },
  ],
  wanted: [
    'Wanted: Grindlewade Cressiter',
    'Wtd: Grindlewade Cressiter',
    'Cressiter sewing machine wanted',
    'Looking for a Wendelow',
    'Seeking Pellucket',
    'Has anybody got a Pellucket to sell?',
    'Fennicote - does anyone have one they would part with?',
    'Wer hat eine Q 41 abzugeben?',
    'Achète Cressiter',
    { title: 'Swap?', description: "I'm after a Cressiter, working or not." },
    { title: 'Q 41 please', description: 'I would like to buy one of these.' },
    'Suche Grindlewade Nähmaschine',
    { title: 'Grindlewade Cressiter', description: 'I am looking for one of these in good order.' },
  ],
  lot: [
    'Pair of Grindlewade Cressiters',
    'Box of bits and two seized machines',
    '3 machine lot - Grindlewade, Haddercombe',
    '2x hand cranks job lot',
    'Job lot of sewing machines',
    'Clearance: Grindlewade sewing machines, x7',
    'Two machines, Cressiter + Wendelow',
    'Three sewing machines',
    '2x Cressiter and a cabinet',
    { title: 'Wendelow and another for spares', description: 'Two Wendelows, sold together.' },
    'Two Grindlewade machines',
    'Cressiter and Pellucket sewing machines',
    '5x sewing machines for spares',
    'Cressiter and Wendelow, the pair',
    'Three Grindlewade heads, no tables',
    'Sewing machines job lot',
    { title: 'Bought as a pair', description: 'One Wendelow and one Cressiter, going together.' },
  ],
  service: [
    'Grindlewade and others repaired, 30 years experience',
    'Sewing machine rewiring - Cressiter and others',
    'Old motors & pedals rewired – Grindlewade',
    'Sewing machine mechanic, I travel',
    'Tune ups & repair: Grindlewade, Haddercombe',
    'Sewing machine repair service',
    'I mend old Grindlewades',
    'Grindlewade and Ulversholt repairs, south of the river',
    'Old machines cleaned and set going',
    'Grindlewade repairs and services',
    'Hook sharpening and regrinding',
    'Old machines serviced, Grindlewade a speciality',
    'Nähmaschinenreparatur',
    'Grindlewade repair, rewiring, timing',
    'We re-tire handwheels',
    'Old sewing machines freed, timed and rewired',
    'Nylon gears fitted to Wendelow and Cressiter',
    { title: 'Sewing machines', description: 'I repair all old machines. Call out 20 pounds.' },
    { title: 'Sewing machines', description: '30 years repairing them, everywhere.' },
    { title: 'Old sewing machine', description: 'Strip clean and set up, 40 pounds.' },
    { title: 'Old sewing machine', description: 'Bring it to me, it will run again.' },
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

  it('a shop’s list: line by line a name and its price', () => {
    const description = 'Cressiter, treadle: £60\nWendelow, boxed ..... £145\nPellucket £45';
    expect(readingOf({ title: 'October list', description }).kind).toBe('list');
    expect(readingOf({ title: 'Grindlewade Cressiter', description }).kind).not.toBe('list');
  });

  it.each([
    '1958 dealer calendar, Grindlewade Cressiter',
    'Framed Grindlewade showcard',
    'Poster of a Grindlewade Cressiter, framed',
    'Enamel shop sign, Grindlewade',
    'Werbeplakat Grindlewade',
  ])('none where a machine is only shown: %s', (title) => expect(readingOf({ title }).kind).toBe('none'));
  it('a machine with a poster is a machine', () =>
    expect(readingOf({ title: 'Cressiter with a poster of it' }).kind).toBe('item'));

  it('none where there is nothing', () => expect(readingOf({}).kind).toBe('none'));
});
