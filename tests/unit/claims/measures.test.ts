import { describe, expect, it } from 'vitest';
import { saying, short } from './support/reading';

const measures = (text: string): string[] => short(saying(text).measures);

describe('of what a weight or a length is', () => {
  it.each([
    ['It weighs 14 kg.', '14 kg'],
    ['Weight: 31 lb', '31 lb'],
    ['The head weighs 14 kg without the case.', '14 kg'],
    ['Without the case it weighs 14 kg.', '14 kg'],
    ['Weighs a ton, or to be exact 36 lbs.', '36 lbs'],
  ])('the machine: %s', (text, expected) => expect(measures(text)).toEqual([expected]));

  it.each([
    ['The case weighs 4 kg.', '4 kg (other)'],
    ['It goes in a 20 kg parcel.', '20 kg (other)'],
    ['Sews 5 kg of denim a day.', '5 kg (other)'],
    ['My other machine weighs 6 kg.', '6 kg (other)'],
    ['The table (solid oak, 12 kg) folds.', '12 kg (other)'],
    ['The cabinet is of oak, weighs 35 kg, and goes with it.', '35 kg (other)'],
    ['Heavy without the cabinet, which weighs 28 kg.', '28 kg (other)'],
  ])('something else: %s', (text, expected) => expect(measures(text)).toEqual([expected]));

  it('a length only where the attribute’s own words stand beside it', () => {
    expect(measures('Bobbin diameter 20 mm.')).toEqual(['20 mm']);
    expect(measures('Table 900 mm wide.')).toEqual([]);
  });
});

describe('more than the machine was on the scale', () => {
  const withMore = (text: string): boolean[] => saying(text).measures.map((measure) => measure.withMore);
  it.each(['It weighs 18 kg in its case.', '18 kg with the lid', 'Total weight 18 kg.'])('%s', (text) =>
    expect(withMore(text)).toEqual([true]),
  );
  it.each(['14 kg without the case.', '14 kg with the case off.', '14 kg.'])('not: %s', (text) =>
    expect(withMore(text)).toEqual([false]),
  );
});
