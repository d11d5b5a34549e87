const [P1, P2, P3, P4, P5] = [0x9e3779b1, 0x85ebca77, 0xc2b2ae3d, 0x27d4eb2f, 0x165667b1];

const turned = (value: number, bits: number): number => (value << bits) | (value >>> (32 - bits));

/**
 * A check sum that tells whether bytes are still what they were: XXH32 with the seed 0, after its specification
 * (xxHash fast digest algorithm, 0.1.1). Not a seal: who can write the bytes can write the sum.
 */
export function checksum(bytes: Uint8Array): number {
  const { buffer, byteOffset, length } = bytes.byteOffset % 4 === 0 ? bytes : bytes.slice();
  const words = new Int32Array(buffer, byteOffset, length >> 2);
  let at = length & ~15;
  let sum = ((at === 0 ? P5 : ofFours(words)) + length) | 0;
  for (at /= 4; at < words.length; at++) sum = Math.imul(turned((sum + Math.imul(words[at]!, P3)) | 0, 17), P4);
  for (at *= 4; at < length; at++) sum = Math.imul(turned((sum + Math.imul(bytes[at]!, P5)) | 0, 11), P1);
  sum = Math.imul(sum ^ (sum >>> 15), P2);
  sum = Math.imul(sum ^ (sum >>> 13), P3);
  return (sum ^ (sum >>> 16)) >>> 0;
}

/**
 * What the words come to, four at a time. An answer waits for it while it runs for the first time: so it is by itself,
 * written out, and each number is kept to 32 bits. Then the browser knows soon that nothing larger ever comes.
 */
function ofFours(words: Int32Array): number {
  const { imul } = Math;
  const p1 = P1 | 0;
  const p2 = P2 | 0;
  let a = (P1 + P2) | 0;
  let b = p2;
  let c = 0;
  let d = -P1 | 0;
  for (let at = 0, last = words.length - 4; at <= last; at += 4) {
    a = (a + imul(words[at]!, p2)) | 0;
    a = imul((a << 13) | (a >>> 19), p1);
    b = (b + imul(words[at + 1]!, p2)) | 0;
    b = imul((b << 13) | (b >>> 19), p1);
    c = (c + imul(words[at + 2]!, p2)) | 0;
    c = imul((c << 13) | (c >>> 19), p1);
    d = (d + imul(words[at + 3]!, p2)) | 0;
    d = imul((d << 13) | (d >>> 19), p1);
  }
  return turned(a, 1) + turned(b, 7) + turned(c, 12) + turned(d, 18);
}
