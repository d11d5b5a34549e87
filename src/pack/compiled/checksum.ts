const [P1, P2, P3, P4, P5] = [0x9e3779b1, 0x85ebca77, 0xc2b2ae3d, 0x27d4eb2f, 0x165667b1];

const turned = (value: number, bits: number): number => (value << bits) | (value >>> (32 - bits));

/**
 * A check sum that tells whether bytes are still what they were: XXH32 with the seed 0, after its specification
 * (xxHash fast digest algorithm, 0.1.1). Not a seal: who can write the bytes can write the sum.
 */
export function checksum(bytes: Uint8Array): number {
  const { buffer, byteOffset, length } = bytes.byteOffset % 4 === 0 ? bytes : bytes.slice();
  const words = new Int32Array(buffer, byteOffset, length >> 2);
  let at = 0;
  let sum = P5;
  if (length >= 16) {
    let [a, b, c, d] = [P1 + P2, P2, 0, -P1];
    // Written out: it runs a few times only before an answer waits for it, too few for the browser to put functions in.
    for (; at + 4 <= words.length; at += 4) {
      a += Math.imul(words[at]!, P2);
      a = Math.imul((a << 13) | (a >>> 19), P1);
      b += Math.imul(words[at + 1]!, P2);
      b = Math.imul((b << 13) | (b >>> 19), P1);
      c += Math.imul(words[at + 2]!, P2);
      c = Math.imul((c << 13) | (c >>> 19), P1);
      d += Math.imul(words[at + 3]!, P2);
      d = Math.imul((d << 13) | (d >>> 19), P1);
    }
    sum = turned(a, 1) + turned(b, 7) + turned(c, 12) + turned(d, 18);
  }
  sum = (sum + length) | 0;
  for (; at < words.length; at++) sum = Math.imul(turned((sum + Math.imul(words[at]!, P3)) | 0, 17), P4);
  for (at *= 4; at < length; at++) sum = Math.imul(turned((sum + Math.imul(bytes[at]!, P5)) | 0, 11), P1);
  sum = Math.imul(sum ^ (sum >>> 15), P2);
  sum = Math.imul(sum ^ (sum >>> 13), P3);
  return (sum ^ (sum >>> 16)) >>> 0;
}
