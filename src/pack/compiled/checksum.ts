/** A sum is what is left of a division by this many times 2^16, less one: a prime of which half, less a half, is a prime too. */
const TIMES = 16_380;
/** Keeps two sums apart in one number. */
const APART = 0x9e3779b1;

/**
 * A check sum that tells whether bytes are still what they were. Not a seal: who can write the bytes can write the sum.
 *
 * Problem: an answer waits for it while it runs for the first time, and then a browser puts every number of more than 30
 * bits into an object of its own. Method: what is left of a large number divided by a prime (Karp and Rabin, Efficient
 * randomized pattern-matching algorithms, 1987), sixteen bits in each step and without a division, by Marsaglia's multiply
 * with carry (Random number generators, 2003): of h = high * 2^16 + low it makes low * TIMES + high, which is h / 2^16 by
 * that prime, and never 2^30. Every second word goes into another sum. A word that is another is always noticed, and any
 * other damage but one in some 2^30.
 * @param bytes a multiple of four of them, at an even place of their buffer
 */
export function checksum({ buffer, byteOffset, length }: Uint8Array): number {
  return ofPairs(new Uint16Array(buffer, byteOffset, length >> 1));
}

/** By itself: what else stood here the browser would have to look at too when it makes this fast, while an answer waits. */
function ofPairs(words: Uint16Array): number {
  const last = words.length - 2;
  let even = 1;
  let odd = 1;
  for (let at = 0; at <= last; at += 2) {
    even = ((even & 0xffff) * TIMES + (even >> 16) + words[at]!) | 0;
    odd = ((odd & 0xffff) * TIMES + (odd >> 16) + words[at + 1]!) | 0;
  }
  return (even + Math.imul(odd, APART)) >>> 0;
}
