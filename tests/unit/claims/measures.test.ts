import { describe, expect, it } from 'vitest';
import type { MeasureClaim } from '../../../src/claims/reading';
import { compile } from '../../../src/engine';
import type { Pack } from '../../../src/pack/schema/index';
import { readingOf, saying, short } from './support/reading';

const trimmedPack = (attributes: unknown): Pack =>
  ({
    schema: 1,
    about: {
      id: 'reaching',
      title: 'Reaching',
      edition: 1,
      language: 'en',
      licence: 'MIT',
      covers: { words: ['Tarnhook machine'] },
    },
    attributes,
  }) as Pack;

const measures = (text: string): string[] => short(saying(text).measures);

describe('of what a weight or a length is', () => {
  it.each([
    ['It weighs 14 kg.', '14 kg'],
    ['Weight: 31 lb', '31 lb'],
    ['Eigengewicht ca. 10,5 kg', '10,5 kg'],
    ['The head weighs 14 kg without the case.', '14 kg'],
    ['Without the case it weighs 14 kg.', '14 kg'],
    ['Weighs a ton, or to be exact 36 lbs.', '36 lbs'],
  ])('the machine: %s', (text, expected) => expect(measures(text)).toEqual([expected]));

  it.each([
    ['The case weighs 4 kg.', '4 kg (other)'],
    ['It goes in a 20 kg parcel.', '20 kg (other)'],
    ['Sews 5 kg of denim a day.', '5 kg (other)'],
    ['Näht 10 kg Vorhangstoff ohne Murren.', '10 kg (other)'],
    ['My other machine weighs 6 kg.', '6 kg (other)'],
    ['The table (solid oak, 12 kg) folds.', '12 kg (other)'],
    ['The cabinet is of oak, weighs 35 kg, and goes with it.', '35 kg (other)'],
    ['Heavy without the cabinet, which weighs 28 kg.', '28 kg (other)'],
  ])('something else: %s', (text, expected) => expect(measures(text)).toEqual([expected]));

  it('a length only where the attribute’s own words stand beside it', () => {
    expect(measures('Bobbin diameter 20 mm.')).toEqual(['20 mm']);
    expect(measures('Table 900 mm wide.')).toEqual([]);
  });

  it('a number of its own is no weight', () => expect(measures('A Cressiter, 21880G, from 1947.')).toEqual([]));
});

describe('more than the machine was on the scale', () => {
  const withMore = (text: string): boolean[] => saying(text).measures.map((measure) => measure.withMore);
  it.each([
    'It weighs 18 kg in its case.',
    '18 kg with the lid',
    'Total weight 18 kg.',
    'Elle fait 22 kg avec la valise.',
  ])('%s', (text) => expect(withMore(text)).toEqual([true]));
  it.each(['14 kg without the case.', '14 kg with the case off.', '14 kg.'])('not: %s', (text) =>
    expect(withMore(text)).toEqual([false]),
  );
});

describe('words right before a weight', () => {
  const only = (text: string): MeasureClaim => saying(text).measures[0]!;
  it.each([
    'It weighs just over 14 kg.',
    'It weighs a little less than 14 kg.',
    'Sie wiegt etwas über 14 kg.',
    'Elle pèse un peu plus de 14 kg.',
  ])('make it about as much: %s', (text) => expect(only(text)).toMatchObject({ bound: null, approximate: true }));
  it.each([
    ['It weighs over 14 kg.', 'least'],
    ['It weighs less than 14 kg.', 'most'],
    ['Sie wiegt über 14 kg.', 'least'],
    ['Elle pèse plus de 14 kg.', 'least'],
  ])('limit it: %s', (text, bound) => expect(only(text).bound).toBe(bound));

  it.each(['Head alone 14 kg, in its case 18.', 'The bare head 14 kg.', 'Kopf allein 14 kg.', 'Tête seule 14 kg.'])(
    'say that nothing else was on the scale: %s',
    (text) => expect(only(text).alone).toBe(true),
  );
  it.each(['The head weighs 14 kg.', 'The case alone weighs 4 kg.', 'It weighs 18 kg in its case.'])(
    'don’t say so: %s',
    (text) => expect(only(text).alone).toBe(false),
  );
});

describe('weights beside the machine’s', () => {
  it.each([
    ['Bread oven £15, weighs 11 kg.', '11 kg (other)'],
    ['Quaint sewing machine £15, weighs 14 kg.', '14 kg'],
    ['It goes in two parcels, 12 kg.', '12 kg (other)'],
    ['In zwei Paketen, 12 kg.', '12 kg (other)'],
    ['En deux colis, 12 kg.', '12 kg (other)'],
    ['Le pied en fonte pèse 25 kg.', '25 kg (other)'],
    ['Le piètement fonte fait son poids, 30 kg.', '30 kg (other)'],
    ['Elle fait à peine 8 kg.', '8 kg'],
    ['It goes in the car, 12 kg.', '12 kg'],
    ['It weighs 5 kg more.', '5 kg (other)'],
    ['It weighs 14 kg today.', '14 kg'],
    ['For its age lightweight at 14 kg.', '14 kg'],
    ['For its drawer lightweight at 14 kg.', '14 kg (other)'],
  ])('%s', (text, expected) => expect(measures(text)).toEqual([expected]));
});

describe('in the unit of the pack', () => {
  const pack = trimmedPack([
    { id: 'reach', kind: 'measure', label: 'reach', unit: 'cm', words: ['reach'] },
    { id: 'swing', kind: 'measure', label: 'widest zigzag', unit: 'mm', words: ['zigzag'] },
  ]);
  const said = (description: string): string[] =>
    readingOf({ title: 'Tarnhook machine', description }, compile([pack])).measures.map(
      ({ attribute, low, high, bound }) => `${attribute.id} ${low}-${high} ${bound}`,
    );

  it.each([
    ['REACH 76 CM.', 'reach 76-76 null'],
    ['A reach of 762 mm.', 'reach 76.2-76.2 null'],
    ['Zigzag up to 7 mm.', 'swing 7-7 null'],
    ['A reach of up to 30 cm.', 'reach 30-30 most'],
  ])('%s', (text, expected) => expect(said(text)).toEqual([expected]));
});
