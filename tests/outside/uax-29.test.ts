import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clauses } from '../../src/text/clauses';
import { tokenise } from '../../src/text/tokens';
import { TIMES } from '../laws/pack-arbitrary/times';
import { advertText } from '../laws/text-arbitraries';

/**
 * Unicode Standard Annex #29, "Unicode Text Segmentation", as Node's Intl.Segmenter (ICU) follows it, beside our tokens
 * and sentences. Where ours differ on purpose, the reason stands beside the check.
 */
const segments = (text: string, granularity: 'word' | 'sentence') =>
  [...new Intl.Segmenter('en', { granularity }).segment(text)].map(({ segment, index, isWordLike }) => ({
    start: index,
    end: index + segment.length,
    text: segment,
    isWord: isWordLike === true,
  }));

const PROSE = [
  'Old treadle machine, cast iron. It sews well, I think.',
  'Die Maschine näht größere Stücke; sie ist schwer.',
  'La machine marche très bien. Elle est lourde!',
  "It isn't new, and the seller's word is all there is.",
  'Straße, naïve, coöperate, Ångström, Œuvre.',
  'Ein «Zitat», ein “quote” and (brackets) [here].',
  'Ελληνικά, кириллица, עברית.',
];

describe('words', () => {
  it('in prose without digits ours are those of UAX 29', () => {
    for (const text of PROSE) {
      const theirs = segments(text, 'word').flatMap((one) => (one.isWord ? [one.text] : []));
      const ours = tokenise(text).flatMap(({ kind, start, end }) => (kind === 'word' ? [text.slice(start, end)] : []));
      expect(ours).toEqual(theirs);
    }
  });

  it.each([
    ['letters and digits part: one name however it is spaced', 'KD372118', ['KD', '372118'], ['KD372118']],
    ['so do the parts of a decimal, joined again by those who read numbers', '14.5', ['14', '5'], ['14.5']],
    ['a French elision is a word of its own', "l'aiguille", ["l'", 'aiguille'], ["l'aiguille"]],
    ['an underscore joins nothing', 'cast_iron', ['cast', 'iron'], ['cast_iron']],
    ['full stops between letters part them', 'U.S.A', ['U', 'S', 'A'], ['U.S.A']],
  ])('finer on purpose: %s', (_why, text, ours, theirs) => {
    expect(tokenise(text).flatMap(({ kind, start, end }) => (kind === 'mark' ? [] : [text.slice(start, end)]))).toEqual(
      ours,
    );
    expect(segments(text, 'word').flatMap((one) => (one.isWord ? [one.text] : []))).toEqual(theirs);
  });

  it('no word or number of ours goes over a boundary of UAX 29', () => {
    fc.assert(
      fc.property(advertText, (text) => {
        const inside = segments(text, 'word');
        for (const { kind, start, end } of tokenise(text)) {
          if (kind !== 'word' && kind !== 'number') continue;
          expect(
            inside.some((one) => one.start <= start && one.end >= end),
            text.slice(start, end),
          ).toBe(true);
        }
      }),
      { numRuns: 300 * TIMES },
    );
  });

  it('no word of UAX 29 is lost', () => {
    fc.assert(
      fc.property(advertText, (text) => {
        const tokens = tokenise(text);
        for (const { isWord, start, end } of segments(text, 'word'))
          if (isWord)
            expect(tokens.some((token) => token.kind !== 'mark' && token.start < end && token.end > start)).toBe(true);
      }),
      { numRuns: 300 * TIMES },
    );
  });
});

/** Each sentence of a text as it is trimmed, by ours: the clauses of one sentence together. */
function oursOf(text: string): string[] {
  const spans: { start: number; end: number }[] = [];
  for (const { sentence, start, end } of clauses(text, tokenise(text))) {
    const there = spans[sentence];
    if (there) there.end = end;
    else spans[sentence] = { start, end };
  }
  return spans.map(({ start, end }) => text.slice(start, end).trim());
}

const theirsOf = (text: string): string[] => segments(text, 'sentence').map((one) => one.text.trim());

describe('sentences', () => {
  it.each([
    'It sews. It is heavy.',
    'Is it heavy? It is! Bring help.',
    'It weighs 14.5 kg. Bring help.',
    'It weighs approx. 14 kg and sews well.',
    'See bedplate.example for more.',
    'It costs 3.4 and no more.',
    'First line\nSecond line',
    'Sie näht. Sie ist schwer.',
    'Elle coud bien. Elle est lourde.',
    'It works... It is old.',
    'She said “it sews.” My aunt agreed.',
  ])('the same: %s', (text) => expect(oursOf(text)).toEqual(theirsOf(text)));

  it.each([
    ['an abbreviation before a capital ends none', 'It belonged to Mrs. Tarn. It sews.', 2, 3],
    ['nor does “no.” before a number', 'Serial no. K20417 is stamped.', 1, 2],
    ['sellers write without capitals', 'it sews well. it is heavy.', 2, 1],
    ['a semicolon ends a statement', 'It sews; it is heavy.', 2, 1],
    ['so does a bullet', 'It sews • it is heavy', 2, 1],
    ['and an emoji', 'It sews 😀 it is heavy', 2, 1],
    ['a missing space after a full stop is a slip', 'It sews well.Collect only.', 2, 1],
    ['“o.n.o.” ends none', 'It is 45 o.n.o. and heavy.', 1, 1],
  ])('other on purpose: %s', (_why, text, ours, theirs) => {
    expect(oursOf(text)).toHaveLength(ours);
    expect(theirsOf(text)).toHaveLength(theirs);
  });
});
