import { describe, expect, it } from 'vitest';
import { caseOf } from '../../../src/audit/audit';
import { numberPlace } from '../../../src/audit/number-place';
import { readDraft } from '../../../src/listing/draft';
import { compile } from '../../../src/pack/compile';
import { parsePack } from '../../../src/pack/parse';

const { pack, issues } = parsePack(
  JSON.stringify({
    schema: 1,
    about: {
      ...{ id: 'club', title: 'Club', edition: 1, licence: 'CC0', language: 'en' },
      covers: { thing: 'sewing machine', words: ['sewing machine'] },
      sources: { book: 'Allotment book', list: 'Price list' },
    },
    models: [
      {
        ...{ id: 'plain', label: 'Plainmodel', names: ['Plainmodel'], made: { from: 1901, to: 1912 }, source: 'book' },
        launchPrice: { amount: 4, currency: 'GBP', year: 1902, source: 'list' },
        batches: [{ size: 500, date: '1902-03', source: 'book' }],
      },
    ],
    serials: {
      schemes: [{ id: 'k', maker: 'Maker', prefix: 'K', digits: 5, source: 'book' }],
      runs: {
        scheme: ['k', 'k', 'k'],
        first: ['10001', '20001', '30001'],
        last: ['20000', '30000', '40000'],
        models: [['plain'], ['plain'], ['plain']],
        year: [1901, 1902, 1903],
      },
    },
  }),
);
if (!pack) throw new Error(JSON.stringify(issues));
const knowledge = compile([pack]);
const placeOf = (description: string, serialText = '') =>
  numberPlace(
    caseOf(readDraft({ title: 'Plainmodel sewing machine', description, serialText }), knowledge, {
      asOf: '2026-06-01',
    }),
  );

describe('where an advert’s number stands', () => {
  it('is among the blocks before and after it, with how many numbers its own holds', () => {
    const runs = placeOf('', 'K 25000')?.lines[0]?.runs ?? [];
    expect(runs.map(({ first, holds, size }) => [first, holds, size])).toEqual([
      ['10001', false, 10_000],
      ['20001', true, 10_000],
      ['30001', false, 10_000],
    ]);
  });

  it('keeps made, launched and bought apart from each other and from what packs know of the model', () => {
    const years = placeOf('Made in 1903, my grandmother bought it in 1921.', 'K 25000')?.years ?? [];
    expect(years.map(({ kind, from, to, source }) => [kind, from, to, source])).toEqual([
      ['made', 1903, 1903, null],
      ['bought', 1921, 1921, null],
      ['model', 1901, 1912, 'Allotment book'],
      ['price', 1902, 1902, 'Price list'],
    ]);
  });

  it('knows the batches on record of a model that the number may be', () => {
    expect(placeOf('', 'K 25000')?.batches).toEqual([
      { model: 'Plainmodel', size: 500, date: '1902-03', source: 'Allotment book' },
    ]);
  });

  it('is none without a number, or without a table that knows any like it', () => {
    expect(placeOf('Heavy.')).toBeNull();
    expect(placeOf('', 'QQ 1')).toBeNull();
  });
});
