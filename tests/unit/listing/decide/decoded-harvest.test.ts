import { expect, it } from 'vitest';
import { wellDecodedHarvest } from '../../../../src/listing/decide/decoded-harvest';
import { readListing } from '../../../../src/listing/read';
import type { Harvest } from '../../../../src/listing/types';
import { documentOf } from '../dom';

/** Bytes 0x80 to 0x9f as windows-1252 has them (WHATWG Encoding Standard); the runtime's own decoder may have controls. */
const HIGH =
  '\u20ac\u0081\u201a\u0192\u201e\u2026\u2020\u2021\u02c6\u2030\u0160\u2039\u0152\u008d\u017d\u008f\u0090\u2018\u2019\u201c\u201d\u2022\u2013\u2014\u02dc\u2122\u0161\u203a\u0153\u009d\u017e\u0178';
/** As a browser shows UTF-8 that it took for windows-1252. */
const broken = (text: string): string =>
  Array.from(new TextEncoder().encode(text), (byte) =>
    byte >= 0x80 && byte < 0xa0 ? HIGH[byte - 0x80]! : String.fromCharCode(byte),
  ).join('');

it('a page that was decoded wrongly is read as it was meant', () => {
  const html = `<title>Métier à tisser</title><h1>Métier à tisser</h1><p class="prix">140 €</p><p>Les tréteaux sont d’origine, le métier à peine usé et complet.</p>`;
  expect(readListing(documentOf(broken(html)))).toMatchObject({
    title: 'Métier à tisser',
    price: { amount: '140', currency: 'EUR', how: 'asking' },
    description: 'Les tréteaux sont d’origine, le métier à peine usé et complet.',
  });
});

it('a harvest that was never broken is the same object, and runs keep their beginnings', () => {
  const harvest = (text: string, runs: { at: number; flags: number }[]): Harvest => ({
    ...{ schema: 1, url: '', base: '', language: null, title: 'Fine', metas: [], jsonLd: [], items: [], rdfa: [] },
    ...{ state: [], unread: [], cut: false },
    page: { lines: [{ text, box: 0, runs }], boxes: [], pictures: [], times: [] },
  });
  const sound = harvest('Price: £45', [{ at: 0, flags: 0 }]);
  expect(wellDecodedHarvest(sound)).toBe(sound);
  const [line] = wellDecodedHarvest(
    harvest(`${broken('£45')} ono`, [
      { at: 0, flags: 1 },
      { at: 4, flags: 0 },
    ]),
  ).page.lines;
  expect(line).toEqual({
    text: '£45 ono',
    box: 0,
    runs: [
      { at: 0, flags: 1 },
      { at: 3, flags: 0 },
    ],
  });
});
