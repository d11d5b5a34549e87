import { describe, expect, it } from 'vitest';
import { audit } from '../../../src/engine';
import { readDraft } from '../../../src/listing/draft';
import type { Pack } from '../../../src/pack/schema/index';
import type { Model, When } from '../../../src/pack/schema/models';
import { AS_OF } from '../../corpus/labelled';
import { knowing } from '../pack/support/knowledge';
import { smallPack } from '../pack/support/packs';

const CAST = 'The frame is cast iron.';

/** A pack with one model, numbers K 10001 to 19999 of 1950 at Hallowdene and K 20001 to 29999 of 1955 at Orrest. */
function withModel(model: Partial<Model>): Pack {
  return smallPack({
    attributes: [
      {
        ...{ id: 'frame', kind: 'choice', label: 'frame' },
        values: [
          { id: 'iron', label: 'cast iron', words: ['cast iron'] },
          { id: 'alloy', label: 'aluminium', words: ['aluminium'] },
        ],
      },
    ],
    models: [{ id: 'm', label: 'Ottermere M', names: ['Ottermere M'], maker: 'Ottermere', ...model }],
    serials: {
      schemes: [{ id: 'k', maker: 'Ottermere', prefix: 'K', digits: 5 }],
      runs: {
        scheme: ['k', 'k'],
        first: ['K10001', 'K20001'],
        last: ['K19999', 'K29999'],
        models: [['m'], ['m']],
        year: [1950, 1955],
        place: ['Hallowdene', 'Orrest'],
      },
    },
  });
}

/** What becomes of "cast iron" said of this machine. */
function heldAgainst(model: Partial<Model>, description: string): string[] {
  const listing = readDraft({ title: 'Ottermere M sewing machine', language: 'en', description });
  return audit(listing, knowing(withModel(model)), { asOf: AS_OF })
    .findings.filter(({ check }) => check === 'claim-fact')
    .map(({ standing }) => standing);
}

/** One kind of condition: an advert that meets it, some that don't, and some that leave it open. */
interface Condition {
  when: When;
  inside: string[];
  outside: string[];
  open: string[];
}
const conditions: [string, Condition][] = [
  [
    'years, by the number',
    {
      when: { made: { from: 1953 } },
      inside: ['Serial number K20500.', 'Made in 1955.'],
      outside: ['Serial number K10500.', 'Made in 1950.'],
      open: ['', 'Bought in 1955.', 'Made in the 1950s.'],
    },
  ],
  [
    'places, by the number',
    { when: { places: ['Orrest'] }, inside: ['Serial number K20500.'], outside: ['Serial number K10500.'], open: [''] },
  ],
  [
    'numbers',
    {
      when: { serials: [{ scheme: 'k', first: 'K20001', last: 'K20999' }] },
      inside: ['Serial number K20001.', 'Serial number K20999.'],
      outside: ['Serial number K21000.', 'Serial number K10500.'],
      open: ['', 'Made in 1955.', 'Serial number K99999.'],
    },
  ],
  [
    'years and a place at once',
    {
      when: { made: { from: 1953 }, places: ['Orrest'] },
      inside: ['Serial number K20500.'],
      outside: ['Serial number K10500.'],
      open: ['', 'Made in 1955.'],
    },
  ],
];

describe.each(conditions)('a fact that holds for some %s only', (_, { when, inside, outside, open }) => {
  const alone: Partial<Model> = { facts: { frame: { is: 'alloy', when } } };
  const variant: Partial<Model> = { variants: [{ id: 'v', when, facts: { frame: 'alloy' } }] };

  it.each(inside)('accuses inside: %s', (said) => {
    expect(heldAgainst(alone, `${CAST} ${said}`)).toEqual(['disproved']);
    expect(heldAgainst(variant, `${CAST} ${said}`)).toEqual(['disproved']);
  });

  it.each([...outside, ...open])('accuses nobody outside, nor where it is not known: %s', (said) => {
    expect(heldAgainst(alone, `${CAST} ${said}`)).toEqual([]);
    expect(heldAgainst(variant, `${CAST} ${said}`)).toEqual([]);
  });

  describe('as an exception to what holds of the others', () => {
    const exception: Partial<Model> = {
      facts: { frame: 'alloy' },
      variants: [{ id: 'v', when, facts: { frame: 'iron' } }],
    };
    it.each(inside)('agrees inside: %s', (said) =>
      expect(heldAgainst(exception, `${CAST} ${said}`)).toEqual(['agrees']),
    );
    it.each(outside)('the general fact holds outside: %s', (said) =>
      expect(heldAgainst(exception, `${CAST} ${said}`)).toEqual(['disproved']),
    );
    it.each(open)('nobody is accused where it is not known: %s', (said) =>
      expect(heldAgainst(exception, `${CAST} ${said}`)).toEqual([]),
    );
  });

  it('where it holds usually it minds, and disproves nothing', () =>
    expect(
      inside.map((said) =>
        heldAgainst({ facts: { frame: { is: 'alloy', when, holds: 'usually' } } }, `${CAST} ${said}`),
      ),
    ).toEqual(inside.map(() => ['caution'])));
});
