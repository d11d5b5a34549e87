const [P1, P2, P3, P4, P5] = [0x9e3779b1, 0x85ebca77, 0xc2b2ae3d, 0x27d4eb2f, 0x165667b1];

const turned = (value: number, bits: number): number => (value << bits) | (value >>> (32 - bits));
const round = (lane: number, word: number): number => Math.imul(turned(lane + Math.imul(word, P2), 13), P1);

/**
 * A check sum that tells whether bytes are still what they were: XXH32 with the seed 0, after its specification
 * (xxHash fast digest algorithm, 0.1.1). Not a seal: who can write the bytes can write the sum.
 */
export function checksum(bytes: Uint8Array): number {
  const words = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const { length } = bytes;
  let at = 0;
  let sum = P5;
  if (length >= 16) {
    let [a, b, c, d] = [(P1 + P2) | 0, P2, 0, -P1];
    for (const last = length - 16; at <= last; at += 16) {
      a = round(a, words.getInt32(at, true));
      b = round(b, words.getInt32(at + 4, true));
      c = round(c, words.getInt32(at + 8, true));
      d = round(d, words.getInt32(at + 12, true));
    }
    sum = turned(a, 1) + turned(b, 7) + turned(c, 12) + turned(d, 18);
  }
  sum = (sum + length) | 0;
  for (; at + 4 <= length; at += 4)
    sum = Math.imul(turned((sum + Math.imul(words.getInt32(at, true), P3)) | 0, 17), P4);
  for (; at < length; at++) sum = Math.imul(turned((sum + Math.imul(bytes[at]!, P5)) | 0, 11), P1);
  sum = Math.imul(sum ^ (sum >>> 15), P2);
  sum = Math.imul(sum ^ (sum >>> 13), P3);
  return (sum ^ (sum >>> 16)) >>> 0;
}
