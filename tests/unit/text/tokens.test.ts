import { describe, expect, it } from 'vitest';
import { tokenise } from '../../../src/text/tokens';

/** Kind and folded text of each token; "_" for glued. */
const shown = (text: string) =>
  tokenise(text)
    .map(({ kind, folded, glued }) => `${glued ? '_' : ''}${kind[0]}:${folded === '\n' ? '⏎' : folded}`)
    .join(' ');

describe('tokenise', () => {
  it.each([
    ['12K, 12-K and 12 K', 'n:12 _w:k _m:, n:12 _m:- _w:k w:and n:12 w:k'],
    ['isn’t it?', "w:isn't w:it _m:?"],
    ['11.5kg 1,340', 'n:11 _m:. _n:5 _w:kg n:1 _m:, _n:340'],
    ['cast-iron and/or', 'w:cast _m:- _w:iron w:and _m:/ _w:or'],
    ['a\n \n\r\nb', 'w:a b:⏎ w:b'],
    ['• one\n• two', 'm:• w:one b:⏎ m:• w:two'],
    ["l’aiguille n'est", "w:l' _w:aiguille w:n' _w:est"],
    ["o'clock 1940's '50s", "w:o'clock n:1940 _m:' _w:s m:' _n:50 _w:s"],
    ['10½ m²', 'n:10 _n:1/2 w:m _n:2'],
    ['cast\u00adiron', 'w:castiron'],
    ['✅works 😀', 'm:✅ _w:works m:😀'],
    ['machine\u00a0à\u202fcoudre', 'w:machine w:a w:coudre'],
    ['', ''],
  ])('%j', (text, tokens) => {
    expect(shown(text)).toBe(tokens);
  });

  it('gives places in UTF-16 units', () => {
    expect(tokenise('😀 ok').map(({ start, end }) => [start, end])).toEqual([
      [0, 2],
      [3, 5],
    ]);
  });
});
