/*
 * A few points of the curve have so small an order that a signature by such a key holds for any text, and not every
 * platform refuses them. Nobody gets one by making keys; whoever shows one could deny whatever it "signed". These are
 * the y coordinates of the points whose order divides the cofactor, 8, and the two of them that have a second, larger
 * spelling; the sign of x, in the last bit, makes no difference. `tests/outside/small-order.test.ts` computes them.
 */
const WEAK: ReadonlySet<string> = new Set([
  '0000000000000000000000000000000000000000000000000000000000000000',
  '0100000000000000000000000000000000000000000000000000000000000000',
  '26e8958fc2b227b045c3f489f2ef98f0d5dfac05d3c63339b13802886d53fc05',
  'c7176a703d4dd84fba3c0b760d10670f2a2053fa2c39ccc64ec7fd7792ac037a',
  'ecffffffffffffffffffffffffffffffffffffffffffffffffffffffffffff7f',
  'edffffffffffffffffffffffffffffffffffffffffffffffffffffffffffff7f',
  'eeffffffffffffffffffffffffffffffffffffffffffffffffffffffffffff7f',
]);

/** @param raw an Ed25519 public key of 32 bytes */
export function isWeakKey(raw: Uint8Array): boolean {
  const hex = (byte: number, i: number): string => (i === 31 ? byte & 0x7f : byte).toString(16).padStart(2, '0');
  return WEAK.has(Array.from(raw, hex).join(''));
}
