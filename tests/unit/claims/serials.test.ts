import { describe, expect, it } from 'vitest';
import { knowledgeFor } from '../../corpus/labelled';
import { readingOf, saying } from './support/reading';

const serials = (text: string): string[] =>
  saying(text).serials.map(
    ({ normal, stated, doubted }) => normal + (stated ? '' : ' unstated') + (doubted ? ' ?' : ''),
  );

describe('serials that an advert states', () => {
  it.each([
    ['Serial number KD372118.', 'KD372118'],
    ['Serial no. KD 372118', 'KD372118'],
    ['The number on the plate is KD372118.', 'KD372118'],
    ['Underneath: KD372118', 'KD372118 unstated'],
    ['Serial number 1150338 N.', '1150338N'],
    ['Serial KD37\u200b2118, on the bed.', 'KD372118'],
    ['Underneath: KD\u200b372118', 'KD372118 unstated'],
    ['The number is KX37\u200b2118.', 'KX372118'],
    ['The number is KD 21 45 32.', 'KD214532'],
    ['The number is 118 402.', '118402'],
    ['The number is 21 45 32.', '214532'],
    ['Number on it: 2 14 532, and it works.', '214532'],
    ['Number KD372118 ... sorry, the other one.', 'KD372118 ?'],
    ["The number, it's KD372118, sorry.", 'KD372118'],
    ["It's painted and the number's 118402.", '118402'],
    ['No KD372118. no wait, not that.', 'KD372118 ?'],
  ])('%s', (text, expected) => expect(serials(text)).toEqual([expected]));

  it.each(['Model number 21 45 32.', 'The number 21 45 32 bobbins.', 'Ring this number: 21 45 32.', 'Number 1954 12.'])(
    'no parted number in: %s',
    (text) => expect(serials(text)).toEqual([]),
  );

  it('a field of its own', () =>
    expect(readingOf({ title: 'Cressiter', serialText: 'KD372118' }).serials).toMatchObject([
      { field: 'serials', quote: 'KD372118', stated: true },
    ]));

  it('digits alone, in a run of the maker that is named', () => {
    expect(serials('214532 stamped by the pillar.')).toEqual(['214532 unstated']);
    expect(serials('It has 214532 on it.')).toEqual(['214532 unstated']);
    expect(readingOf({ title: 'Old sewing machine', description: '214532 stamped by the pillar.' }).serials).toEqual(
      [],
    );
  });

  it('in the form of a scheme with letters behind, these belong to it', () => {
    const [claim] = readingOf(
      { title: 'Lorivaude Oudavelle sewing machine', description: 'Number 234567 LV on the underside.' },
      knowledgeFor('tuned/selvage-bench'),
    ).serials;
    expect(claim).toMatchObject({ quote: '234567 LV', normal: '234567LV', stated: true });
  });

  it.each([
    'Advert ref. 214532',
    'Anzeigennummer 214532',
    'Patent number 372118.',
    'Part no. 372118.',
    'Call me on 372118.',
    'I also have KD372118.',
    '123456 happy customers.',
  ])('none in: %s', (text) => expect(serials(text)).toEqual([]));

  it('the advert itself takes one back', () => {
    expect(serials('Serial number KD210999? Rather KD230999.')[0]).toBe('KD210999 ?');
    expect(serials('Serial number KD372118.')).toEqual(['KD372118']);
  });

  it('the same number twice is one', () =>
    expect(serials('Serial number KD372118. Yes, KD372118.')).toEqual(['KD372118']));
});
