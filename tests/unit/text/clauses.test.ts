import { describe, expect, it } from 'vitest';
import { clauses } from '../../../src/text/clauses';
import { tokenise } from '../../../src/text/tokens';

/** Clauses as written; those of one sentence in one array. */
function cut(text: string): string[][] {
  const sentences: string[][] = [];
  for (const { sentence, start, end } of clauses(text, tokenise(text))) {
    sentences[sentence] ??= [];
    sentences[sentence].push(text.slice(start, end));
  }
  return sentences;
}

describe('sentences', () => {
  it.each([
    ['It is iron. It is old!', ['It is iron.', 'It is old!']],
    ['Weighs 11.5 kg. Heavy', ['Weighs 11.5 kg.', 'Heavy']],
    ['weighs 11.5 kg. heavy', ['weighs 11.5 kg.', 'heavy']],
    ['bed 38 cm. 301000LV', ['bed 38 cm.', '301000LV']],
    ['approx. 11 kg', ['approx. 11 kg']],
    ['Ser. No. K 20-417 is on it', ['Ser. No. K 20-417 is on it']],
    ['No. It is iron', ['No.', 'It is iron']],
    ['fits no. 5 bobbins', ['fits no. 5 bobbins']],
    ['drop feed no. 6.5 kg', ['drop feed no.', '6.5 kg']],
    ['c. 1938 machine', ['c. 1938 machine']],
    ['weighs 21 lb. 8 oz. now', ['weighs 21 lb. 8 oz. now']],
    ['weighs 21 lb. Very heavy', ['weighs 21 lb.', 'Very heavy']],
    ['z.B. mit Koffer, vgl. Foto', ['z.B. mit Koffer, vgl. Foto']],
    ['£40 o.n.o. Collect', ['£40 o.n.o.', 'Collect']],
    ['sews well.Collect only', ['sews well.', 'Collect only']],
    ['see shop.example for more', ['see shop.example for more']],
    ['one\ntwo\n\nthree', ['one', 'two', 'three']],
    ['• iron • heavy', ['• iron', '• heavy']],
    ['✅ works ✅ clean', ['✅ works', '✅ clean']],
    ['iron; heavy', ['iron;', 'heavy']],
    ['1. first\n2. second', ['1. first', '2. second']],
    ['am 3. Mai 1954 gekauft', ['am 3. Mai 1954 gekauft']],
    ['iron... heavy', ['iron...', 'heavy']],
    ['old machine | works', ['old machine', '| works']],
  ])('%j', (text, sentences) => {
    expect(cut(text).map((parts) => parts.join(' '))).toEqual(sentences);
  });
});

describe('clauses', () => {
  it.each([
    ['not alloy, but iron', ['not alloy,', 'but iron']],
    ['it is old although it works', ['it is old', 'although it works']],
    ['nothing but iron', ['nothing but iron']],
    ['ran for a while', ['ran for a while']],
    ['alt aber gut', ['alt', 'aber gut']],
    ['coud aussi bien que la grande', ['coud aussi bien que la grande']],
    ['lourde bien que petite', ['lourde', 'bien que petite']],
    ['costs £1,340 now', ['costs £1,340 now']],
    ['works well – no case', ['works well –', 'no case']],
    ['cast-iron bed, 11 - 12 kg', ['cast-iron bed,', '11 - 12 kg']],
    ['iron—not alloy', ['iron—', 'not alloy']],
    ['Material: cast iron', ['Material:', 'cast iron']],
    ['Serial: K20417', ['Serial: K20417']],
    ['the head (1954) is iron', ['the head', '(1954)', 'is iron']],
    ['iron / heavy', ['iron /', 'heavy']],
    ['2) the treadle, 24 kg', ['2) the treadle,', '24 kg']],
    ['iron\nb) its lid', ['iron', 'b) its lid']],
    ['iron (2) and 12) more', ['iron', '(2)', 'and 12)', 'more']],
    ['“Nice!” she said', ['“Nice!”', 'she said']],
  ])('%j', (text, parts) => {
    expect(cut(text).flat()).toEqual(parts);
  });
});
