import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { JoinedPhrases, PackedPhrases, packPhrases } from '../../src/text/packed-phrases';
import { PhraseIndex } from '../../src/text/phrases';
import { tokenise } from '../../src/text/tokens';
import { TIMES } from './pack-arbitrary/times';
import { advertText, text, wording } from './text-arbitraries';

const phrases = fc.array(fc.oneof(wording, text), { maxLength: 12 });
const texts = fc.oneof(wording, advertText);

function packed(known: readonly string[]): PackedPhrases<string> {
  return new PackedPhrases(packPhrases(known.map((phrase, i) => [phrase, i] as const)), (i) => known[i]!);
}

function indexed(known: readonly string[]): PhraseIndex<string> {
  const index = new PhraseIndex<string>();
  for (const phrase of known) index.add(phrase, phrase);
  return index;
}

describe('packed phrases', () => {
  it('are found as the index finds them, in the same order', () => {
    fc.assert(
      fc.property(phrases, texts, (known, written) => {
        const tokens = tokenise(written);
        expect(packed(known).search(tokens)).toEqual(indexed(known).search(tokens));
      }),
      { numRuns: 500 * TIMES },
    );
  });

  it('of several packs are found as if they stood in one index', () => {
    fc.assert(
      fc.property(fc.array(phrases, { maxLength: 3 }), texts, (packs, written) => {
        const tokens = tokenise(written);
        const joined = new JoinedPhrases(packs.map(packed));
        expect(joined.search(tokens)).toEqual(indexed(packs.flat()).search(tokens));
      }),
      { numRuns: 300 * TIMES },
    );
  });

  it('whose keys have one hash are told apart by their letters', () => {
    const [one, other] = ['costarring', 'liquid'] as const;
    const tree = packed([one, `${one} ${other}`, other]);
    for (const word of [one, other]) expect(tree.search(tokenise(word)).map(({ value }) => value)).toEqual([word]);
    const { hashes } = packPhrases([
      [one, 0],
      [other, 1],
    ]);
    expect(hashes[0]).toBe(hashes[1]);
  });
});
