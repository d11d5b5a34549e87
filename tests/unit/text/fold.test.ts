import { describe, expect, it } from 'vitest';
import { fold } from '../../../src/text/fold';

const CASES: [written: string, folded: string][] = [
  ['Cast IRON', 'cast iron'],
  ['Größe', 'grosse'],
  ['GROẞ', 'gross'],
  ['Œuvre à l’été', "oeuvre a l'ete"],
  ['Smørrebrød, Łódź, æ', 'smorrebrod, lodz, ae'],
  ['“quoted” ‘single’ 10″ 5′ «guillemets»', `"quoted" 'single' 10" 5' "guillemets"`],
  ['isn`t isn´t', "isn't isn't"],
  ['1947–49 — 5 − 3 ‐ ‑', '1947-49 - 5 - 3 - -'],
  ['1\u00a0340\u202f50\u2009kr\u3000x\ty', '1 340 50 kr x y'],
  ['soft\u00adhyphen zero\u200bwidth \ufeffmark', 'softhyphen zerowidth mark'],
  ['Ｋ２０４１７ ￥１２', 'k20417 ¥12'],
  ['ﬁne ㎏ №5', 'fine kg no5'],
  ['e\u0301te\u0301', 'ete'],
  ['10½ ½ 3¼', '10 1/2 1/2 3 1/4'],
  ['١٢٣ ४५', '123 45'],
  ['a\nb\r\nc\u2028d', 'a\nb\r\nc\nd'],
  ['ガ', 'ガ'.normalize('NFKD')],
  ['😀 ok 👩‍🔧', '😀 ok 👩🔧'],
];

describe('fold', () => {
  it.each(CASES)('%j is %j', (written, folded) => {
    expect(fold(written).text).toBe(folded);
  });

  it('goes back to what was written', () => {
    const text = '😀 Größe: 10½″ ﬁn e\u0301te\u0301\u200b!';
    const folded = fold(text);
    const original = (part: string) => {
      const at = folded.text.indexOf(part);
      const { start, end } = folded.toOriginal(at, at + part.length);
      return text.slice(start, end);
    };
    expect(original('grosse')).toBe('Größe');
    expect(original('grosse: ')).toBe('Größe: ');
    expect(original('10 1/2"')).toBe('10½″');
    expect(original('1/2')).toBe('½');
    expect(original('ete')).toBe('e\u0301te\u0301');
    expect(original('fin')).toBe('ﬁn');
  });

  it('takes whole what was folded as one', () => {
    const folded = fold('Maß');
    expect(folded.toOriginal(3, 4)).toEqual({ start: 2, end: 3 });
    expect(folded.toOriginal(2, 3)).toEqual({ start: 2, end: 3 });
  });

  it('keeps empty spans empty, at the end too', () => {
    expect(fold('Maß').toOriginal(4, 4)).toEqual({ start: 3, end: 3 });
    expect(fold('mass').toOriginal(2, 2)).toEqual({ start: 2, end: 2 });
  });
});
