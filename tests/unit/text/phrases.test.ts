import { describe, expect, it } from 'vitest';
import { PhraseIndex } from '../../../src/text/phrases';
import { tokenise } from '../../../src/text/tokens';

function found(phrases: string[], text: string): string[] {
  const index = new PhraseIndex<string>();
  for (const phrase of phrases) index.add(phrase, phrase);
  return index.search(tokenise(text)).map(({ start, end }) => text.slice(start, end));
}

describe('a phrase is found', () => {
  it.each([
    ['cast iron', 'Cast-Iron'],
    ['cast iron', 'CAST  IRON'],
    ['cast-iron', 'cast iron'],
    ['cast iron', 'castings, cast‑iron', 'cast‑iron'],
    ['bobbin', 'five bobbins', 'bobbins'],
    ['bobbin case', 'two bobbin cases', 'bobbin cases'],
    ['class 15', 'class-15'],
    ['Tarn 3', 'Tarn3'],
    ['Tarn 3', 'two Tarn 3s', 'Tarn 3'],
    ['1940s', "1940's"],
    ['s/n', 'S/N'],
    ['ser no', 'Ser. No.', 'Ser. No'],
    ['3/4 size', '¾ size'],
    ['eingebauter Motor', 'der eingebaute Motor', 'eingebaute Motor'],
    ['niedriger Schaft', 'mit niedrigem Schaft', 'niedrigem Schaft'],
    ['¾ size', '3/4 size'],
    ['3/4 size', '3/4-size'],
    ['Tarn Mk II', 'the Tarn Mk.II', 'Tarn Mk.II'],
    ['Tarn Mk II', 'a Tarn Mark 2', 'Tarn Mark 2'],
    ['Tarn de Luxe', 'TARN DELUX'],
    ['cream and blue', 'cream/blue'],
    ['cream and blue', 'cream & blue'],
    ['Größe', 'GROSSE'],
    ['aiguille', "l'aiguille", 'aiguille'],
    ['isn’t', "isn't"],
    ['11.5', '11.5 kg', '11.5'],
  ])('%j in %j', (phrase, text, quote = text) => {
    expect(found([phrase], text)).toEqual([quote]);
  });
});

describe('a phrase is not found', () => {
  it.each([
    ['cast iron', 'cast, iron'],
    ['cast iron', 'cast. Iron'],
    ['cast iron', 'cast\niron'],
    ['cast iron', 'cast: iron'],
    ['cast iron', 'cast - iron'],
    ['cast iron', 'cast irony'],
    ['class 15', 'class 15,000'],
    ['class 15', 'class 15.5'],
    ['Tarn 3', 'Tarn 3B'],
    ['Tarn 3', 'Tarn 30'],
    ['Tarn K', 'Tarn K20'],
    ['4 in', '3/4 in'],
    ['leg', 'legs'],
    ['20417', 'K20417'],
  ])('%j in %j', (phrase, text) => {
    expect(found([phrase], text)).toEqual([]);
  });
});

describe('the index', () => {
  it('gives overlapping matches by where they begin, the longest first', () => {
    expect(found(['cast', 'cast iron', 'iron bed', 'cast iron bed'], 'cast iron bed')).toEqual([
      'cast iron bed',
      'cast iron',
      'cast',
      'iron bed',
    ]);
  });

  it('says which tokens were matched', () => {
    const index = new PhraseIndex<number>();
    index.add('cast iron', 7);
    expect(index.search(tokenise('a cast-iron bed'))).toEqual([
      { start: 2, end: 11, firstToken: 1, lastToken: 3, value: 7 },
    ]);
  });

  it('keeps all values of one phrase', () => {
    const index = new PhraseIndex<number>();
    index.add('iron', 1);
    index.add('Iron', 2);
    expect(
      index
        .search(tokenise('iron'))
        .map(({ value }) => value)
        .sort(),
    ).toEqual([1, 2]);
  });

  it('refuses what can never be found, and what no one writes', () => {
    const index = new PhraseIndex<number>();
    expect(index.add('', 1)).toBe(false);
    expect(index.add('--', 1)).toBe(false);
    expect(index.add('a '.repeat(41), 1)).toBe(false);
    expect(index.add('__proto__', 1)).toBe(true);
    expect(index.search(tokenise('constructor __proto__'))).toHaveLength(1);
  });
});

it('a phrase that is added after a search is found by the next one', () => {
  const index = new PhraseIndex<string>();
  index.add('cast iron', 'one');
  expect(index.search(tokenise('alloy'))).toEqual([]);
  index.add('alloy', 'other');
  expect(index.search(tokenise('alloy')).map(({ value }) => value)).toEqual(['other']);
});
