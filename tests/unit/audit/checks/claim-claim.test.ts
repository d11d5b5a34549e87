import { describe, expect, it } from 'vitest';
import { compile } from '../../../../src/engine';
import { packOf } from '../../../corpus/packs';
import { found } from '../support/demo';

const check = (description: string): string[] =>
  found('claim-claim', { title: 'Old sewing machine', description, language: 'en' });

describe('two statements of the advert that exclude each other', () => {
  it.each([
    ['Cast iron body. The alloy body is light.', 'disproved: Cast iron body | alloy body'],
    ['Low shank. Needs high shank feet, high shank it is.', 'disproved: Low shank | high shank feet'],
    ['Made in 1950. Made in 1961.', 'disproved: 1950 | 1961'],
  ])('%s', (text, expected) =>
    expect(check(text).map((line) => line.split(' | ').slice(0, 2).join(' | '))).toEqual([expected]),
  );

  it.each([
    'Cast iron body. The case is aluminium.',
    'Hand crank and treadle.',
    'Takes a round bobbin, class 15.',
    'Cast iron body, not aluminium.',
    'Cast iron body, I think it is aluminium inside.',
    'Made in 1950. Bought in 1961.',
    'Made c. 1950. Made in 1951.',
    'Treadle machine, without the treadle.',
  ])('both can hold: %s', (text) => expect(check(text)).toEqual([]));

  it('is left to the facts where they decide', () =>
    expect(
      found('claim-claim', {
        title: 'Grindlewade Cressiter sewing machine',
        description: 'Cast iron body. Alloy body.',
        language: 'en',
      }),
    ).toEqual([]));
});

describe('two statements that no kind of machine has together', () => {
  it.each([
    ['Vibrating shuttle. Takes class 15 bobbins.', ['disproved: Vibrating shuttle | class 15 bobbins']],
    ['It has a rotary hook and long bobbins.', ['disproved: long bobbins | rotary hook']],
    ['Vibrating shuttle, long bobbins. Takes class 15 bobbins too.', ['disproved: long bobbins | class 15 bobbins']],
    ['Vibrating shuttle. It does zigzag.', ['caution: Vibrating shuttle | zigzag']],
    ['Vibrating shuttle with long bobbins. It does zigzag.', ['caution: Vibrating shuttle | zigzag']],
  ])('%s', (text, expected) => expect(check(text)).toEqual(expected));

  it.each([
    'Vibrating shuttle. It does not take class 15 bobbins.',
    'Rotary hook, class 66 bobbins.',
    'Three-quarter size with an alloy body.',
    'Compact, cast iron body, zigzag machine.',
    'Free arm, cast iron body, straight stitch only.',
    'Transverse shuttle, alloy body, three-quarter size.',
    'Zigzag machine on a treadle, alloy body.',
    'Rotary hook, top loading bobbin.',
  ])('exceptions exclude nothing: %s', (text) => expect(check(text)).toEqual([]));

  it('nothing follows from kinds of which a pack doesn’t say that they are all', () => {
    const trade = packOf('src/pack/shipped/trade.json');
    const { complete, ...covers } = trade.about.covers;
    expect(complete).toBe(true);
    const partial = compile([{ ...trade, about: { ...trade.about, covers } }]);
    const draft = { title: 'Old sewing machine', description: 'Vibrating shuttle. Class 15 bobbins.', language: 'en' };
    expect(found('claim-claim', draft, compile([trade]))).toHaveLength(1);
    expect(found('claim-claim', draft, partial)).toEqual([]);
  });
});
