import { expect, it } from 'vitest';
import { isSignedBy } from '../../src/sharing/seal/signature';
import { isWeakKey } from '../../src/sharing/seal/weak-key';

/*
 * Points of small order of the curve of RFC 8032, section 5.1, computed here from its equation and its addition law
 * (sections 5.1, 5.1.3 and 5.1.4) in whole numbers: the multiples of a point of order 8.
 */
const P = 2n ** 255n - 19n;
const mod = (n: bigint): bigint => ((n % P) + P) % P;
const power = (base: bigint, exponent: bigint): bigint => {
  let result = 1n;
  for (let [b, e] = [mod(base), exponent]; e > 0n; e >>= 1n, b = mod(b * b)) if (e & 1n) result = mod(result * b);
  return result;
};
const inverse = (n: bigint): bigint => power(n, P - 2n);
const D = mod(-121665n * inverse(121666n));

type Point = readonly [x: bigint, y: bigint];
const add = ([x1, y1]: Point, [x2, y2]: Point): Point => {
  const product = mod(D * x1 * x2 * y1 * y2);
  return [mod((x1 * y2 + x2 * y1) * inverse(1n + product)), mod((y1 * y2 + x1 * x2) * inverse(1n - product))];
};
const times = (n: bigint, point: Point): Point => {
  let sum: Point = [0n, 1n];
  for (let [left, power2] = [n, point]; left > 0n; left >>= 1n, power2 = add(power2, power2))
    if (left & 1n) sum = add(sum, power2);
  return sum;
};
/** The point of this y and an even x, where there is one (section 5.1.3). */
const pointOf = (y: bigint): Point | null => {
  const square = mod((y * y - 1n) * inverse(D * y * y + 1n));
  let x = power(square, (P + 3n) / 8n);
  if (mod(x * x) !== square) x = mod(x * power(2n, (P - 1n) / 4n));
  if (mod(x * x) !== square) return null;
  return [x & 1n ? P - x : x, y];
};
const L = 2n ** 252n + 27742317777372353535851937790883648493n;
const encode = (y: bigint, sign: bigint): Buffer => {
  const hex = (y | (sign << 255n)).toString(16).padStart(64, '0');
  return Buffer.from(hex, 'hex').reverse();
};

/** All eight: what is left of some point when its part of the large prime order is taken off, and that one's multiples. */
function smallOrder(): Point[] {
  for (let y = 2n; ; y++) {
    const point = pointOf(y);
    const rest = point && times(L, point);
    if (rest && times(4n, rest)[1] !== 1n) return [0n, 1n, 2n, 3n, 4n, 5n, 6n, 7n].map((n) => times(n, rest));
  }
}

it('all points of small order are refused as keys, in each of their spellings', () => {
  const points = smallOrder();
  expect(new Set(points.map(String)).size).toBe(8);
  for (const point of points) expect(times(8n, point)).toEqual([0n, 1n]);
  for (const y of new Set(points.map((point) => point[1])))
    for (const spelling of [y, y + P].filter((one) => one < 2n ** 255n))
      for (const sign of [0n, 1n]) expect(isWeakKey(encode(spelling, sign))).toBe(true);
});

it('other points are not', () => {
  // The base point of section 5.1, and the keys of the test vectors of section 7.1.
  expect(isWeakKey(encode(mod(4n * inverse(5n)), 0n))).toBe(false);
  for (const key of [
    'd75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a',
    '3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c',
  ])
    expect(isWeakKey(Buffer.from(key, 'hex'))).toBe(false);
});

it('a signature that would hold for any text under such a key holds for none', async () => {
  // R is the neutral point and S zero: 0 B = R + h A for every h, where A is the neutral point too.
  const neutral = encode(1n, 0n);
  const signature = Buffer.concat([neutral, Buffer.alloc(32)]).toString('base64url');
  expect(await isSignedBy(neutral.toString('base64url'), signature, 'seal', 'any')).toBe(false);
});
