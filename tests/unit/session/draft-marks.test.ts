import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/audit/types';
import { readDraft } from '../../../src/listing/draft';
import type { Draft } from '../../../src/listing/types';
import { carriedMarks, draftMarks, type Mark, piecesOf } from '../../../src/session/draft-marks';

const finding = (id: string, said: Finding['said'], standing: Finding['standing'] = 'disproved'): Finding => ({
  ...{ id, check: 'claim-fact', standing, attribute: null, said, known: [], text: '', ask: null },
});
const mark = (start: number, end: number, standing: Mark['standing'] = 'disproved'): Mark => ({
  ...{ start, end, standing, finding: `${start}` },
});

describe('marks in a draft', () => {
  const draft: Draft = {
    title: '  Full   size machine ',
    description: 'Runs well.\n\n\nAll  metal.',
    priceText: ' £120 ',
    serialText: 'K 123, K 456',
  };
  const listing = readDraft(draft);
  const wordsAt = (field: keyof Draft & string, marks: readonly Mark[]) =>
    marks.map(({ start, end }) => String(draft[field]).slice(start, end));
  const said = (field: 'title' | 'description', quote: string): Finding['said'] => {
    const start = listing[field].indexOf(quote);
    return [{ field, quote, start, end: start + quote.length }];
  };

  it('stand where the seller wrote the words', () => {
    const marks = draftMarks(draft, listing, [
      finding('a', said('title', 'Full size')),
      finding('b', said('description', 'All metal')),
      finding('c', [{ field: 'price', quote: '£120', start: 0, end: 4 }]),
      finding('d', [{ field: 'serials', quote: 'K 456', start: 0, end: 5 }]),
    ]);
    expect(wordsAt('title', marks.title)).toEqual(['Full   size']);
    expect(wordsAt('description', marks.description)).toEqual(['All  metal']);
    expect(wordsAt('priceText', marks.priceText)).toEqual(['£120']);
    expect(wordsAt('serialText', marks.serialText)).toEqual(['K 456']);
    expect(marks.conditionText).toEqual([]);
  });

  it('stand nowhere for findings without words', () => {
    expect(Object.values(draftMarks(draft, listing, [finding('a', [])])).flat()).toEqual([]);
  });
});

describe('marks in a text that has been changed since', () => {
  it.each([
    ['stay before the change', 'full size machine', 'full size, machine', [mark(0, 9)], [[0, 9]]],
    ['move behind it', 'a full size', 'a heavy full size', [mark(2, 11)], [[8, 17]]],
    ['go where the change touches them', 'full size', 'full-size', [mark(0, 9)], []],
    ['stay in an unchanged text', 'full size', 'full size', [mark(0, 9)], [[0, 9]]],
  ] as const)('%s', (_what, before, after, marks, expected) => {
    expect(carriedMarks(marks, before, after).map(({ start, end }) => [start, end])).toEqual(expected);
  });
});

describe('a marked text in pieces', () => {
  it('is the same text, with the gravest standing of each piece', () => {
    const pieces = piecesOf('abcdef', [mark(1, 4, 'agrees'), mark(2, 5, 'disproved')]);
    expect(pieces.map(({ text, standing }) => [text, standing])).toEqual([
      ['a', null],
      ['b', 'agrees'],
      ['cd', 'disproved'],
      ['e', 'disproved'],
      ['f', null],
    ]);
  });

  it('is empty where the text is', () => expect(piecesOf('', [])).toEqual([]));
});
