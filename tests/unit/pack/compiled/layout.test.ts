import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { partsOf } from '../../../../src/pack/compile/parts-of';
import { LAYOUT } from '../../../../src/pack/compiled/layout';
import { bytesOf } from '../../../../src/pack/compiled/write';
import { ROOT } from '../../../steps/root';
import { accepted } from '../support/packs';

/**
 * What the bytes of one pack are in each layout that there has been. Compiled packs that browsers keep are told from
 * newer ones by the layout's number alone, so that bytes may never change under the same number: not by the way they
 * are laid, nor by how words are cut, folded and hashed, nor by how numbers are read.
 */
const DIGESTS: Record<number, string> = {
  1: '08ca383903b3b5599094f06a39041ab126d0d809b123fe20981905eb493058e2',
  2: '3fd470c3fa9d5e4ba49a6e0d56b26416b8fdafda772e6be2d79576861ed5ddda',
  3: '33899116632475f546a4e7da2b23f16d087358a712219c985bfdcf412337be3f',
  4: '3e5b40bd721c9aa188e71421e6a77a4aa82c9d537eada17c642bf39e1be2e3ab',
  5: '8305321be06f41fb592e7af33fd13a9963b523bbfa0ee572a5e4cc6e0b449b73',
  6: '921716520d8fb568a62b7ed033d09e10c8d49f674531bb0b1d7b5082c6496649',
  7: 'b001406eb81251df053496505c7aa133864f6e39706a23303fb2710c81e08502',
};

/** Every part of the format, and words of every kind that cutting and folding treat in a way of their own. */
const sample = accepted(readFileSync(`${ROOT}/tests/unit/pack/compiled/golden-pack.json`, 'utf8'));

it('changes its number whenever the bytes of a pack change', () => {
  const digest = createHash('sha256')
    .update(bytesOf(partsOf(sample)))
    .digest('hex');
  expect(
    { layout: LAYOUT, digest },
    'the bytes of a compiled pack are others: raise LAYOUT in src/pack/compiled/layout.ts, and add its digest here',
  ).toEqual({ layout: LAYOUT, digest: DIGESTS[LAYOUT] });
});

it('is the last of those that there have been', () => {
  expect(Math.max(...Object.keys(DIGESTS).map(Number))).toBe(LAYOUT);
});
