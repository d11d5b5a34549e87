import { createHash } from 'node:crypto';
import { expect, it } from 'vitest';
import { canonicalJson } from '../../src/sharing/seal/canonical';

/*
 * Numbers in canonical form, against the published test sequence of the authors of RFC 8785: the repository
 * cyberphone/json-canonicalization on GitHub (Apache License 2.0), testdata/README.md, which describes the sequence,
 * lists its first values and tells the SHA-256 of the first 1,000 and 10,000 lines. A line is the value's bits in
 * hexadecimal digits, a comma, and the value as it is written. The generator below is written after that description.
 */

const FIRST = `
  0000000000000000 8000000000000000 0000000000000001 8000000000000001 c46696695dbd1cc3 c43211ede4974a35
  c3fce97ca0f21056 c3c7213080c1a6ac c39280f39a348556 c35d9b1f5d20d557 c327af4c4a80aaac c2f2f2a36ecd5556
  c2be51057e155558 c28840d131aaaaac c253670dc1555557 c21f0b4935555557 c1e8d5d42aaaaaac c1b3de4355555556
  c17fca0555555556 c1496e6aaaaaaaab c114585555555555 c0e046aaaaaaaaab c0aa0aaaaaaaaaaa c074d55555555555
  c040aaaaaaaaaaab c00aaaaaaaaaaaab bfd5555555555555 bfa1111111111111 bf6b4e81b4e81b4f bf35d867c3ece2a5
  bf0179ec9cbd821e becbf647612f3696 be965e9f80f29212 be61e54c672874db be2ca213d840baf8 bdf6e80fe033c8c6
  bdc2533fe68fd3d2 bd8d51ffd74c861c bd5774ccac3d3817 bd22c3d6f030f9ac bcee0624b3818f79 bcb804ea293472c7
  bc833721ba905bd3 bc4ebe9c5db3c61e bc18987d17c304e5 bbe3ad30dfcf371d bbaf7b816618582f bb792f9ab81379bf
  bb442615600f9499 bb101e77800c76e1 bad9ca58cce0be35 baa4a1e0a3e6fe90 ba708180831f320d ba3a68cd9e985016
  446696695dbd1cc3 443211ede4974a35 43fce97ca0f21056 43c7213080c1a6ac 439280f39a348556 435d9b1f5d20d557
  4327af4c4a80aaac 42f2f2a36ecd5556 42be51057e155558 428840d131aaaaac 4253670dc1555557 421f0b4935555557
  41e8d5d42aaaaaac 41b3de4355555556 417fca0555555556 41496e6aaaaaaaab 4114585555555555 40e046aaaaaaaaab
  40aa0aaaaaaaaaaa 4074d55555555555 4040aaaaaaaaaaab 400aaaaaaaaaaaab 3fd5555555555555 3fa1111111111111
  3f6b4e81b4e81b4f 3f35d867c3ece2a5 3f0179ec9cbd821e 3ecbf647612f3696 3e965e9f80f29212 3e61e54c672874db
  3e2ca213d840baf8 3df6e80fe033c8c6 3dc2533fe68fd3d2 3d8d51ffd74c861c 3d5774ccac3d3817 3d22c3d6f030f9ac
  3cee0624b3818f79 3cb804ea293472c7 3c833721ba905bd3 3c4ebe9c5db3c61e 3c18987d17c304e5 3be3ad30dfcf371d
  3baf7b816618582f 3b792f9ab81379bf 3b442615600f9499 3b101e77800c76e1 3ad9ca58cce0be35 3aa4a1e0a3e6fe90
  3a708180831f320d 3a3a68cd9e985016 4024000000000000 4014000000000000 3fe0000000000000 3fa999999999999a
  3f747ae147ae147b 3f40624dd2f1a9fc 3f0a36e2eb1c432d 3ed4f8b588e368f1 3ea0c6f7a0b5ed8d 3e6ad7f29abcaf48
  3e35798ee2308c3a 3ed539223589fa95 3ed4ff26cd5a7781 3ed4f95a762283ff 3ed4f8c60703520c 3ed4f8b72f19cd0d
  3ed4f8b5b31c0c8d 3ed4f8b58d1c461a 3ed4f8b5894f7f0e 3ed4f8b588ee37f3 3ed4f8b588e47da4 3ed4f8b588e3849c
  3ed4f8b588e36bb5 3ed4f8b588e36937 3ed4f8b588e368f8 3ed4f8b588e368f1 3ff0000000000000 bff0000000000000
  bfeffffffffffffa bfeffffffffffffb 3feffffffffffffa 3feffffffffffffb 3feffffffffffffc 3feffffffffffffe
  bfefffffffffffff bfefffffffffffff 3fefffffffffffff 3fefffffffffffff 3fd3333333333332 3fd3333333333333
  3fd3333333333334 0010000000000000 000ffffffffffffd 000fffffffffffff 7fefffffffffffff ffefffffffffffff
  4340000000000000 c340000000000000 4430000000000000 44b52d02c7e14af5 44b52d02c7e14af6 44b52d02c7e14af7
  444b1ae4d6e2ef4e 444b1ae4d6e2ef4f 444b1ae4d6e2ef50 3eb0c6f7a0b5ed8c 3eb0c6f7a0b5ed8d 41b3de4355555553
  41b3de4355555554 41b3de4355555555 41b3de4355555556 41b3de4355555557 becbf647612f3696 43143ff3c1cb0959
`;

const bits = new BigUint64Array(1);
const number = new Float64Array(bits.buffer);

function* sequence(): Generator<bigint> {
  for (const first of FIRST.trim().split(/\s+/)) yield BigInt(`0x${first}`);
  // Then 2,000 in a row from the least normal number upwards.
  for (let i = 0n; i < 2000n; i++) yield 0x0010000000000000n + i;
  // Then the hash of 32 zero bytes, the hash of that, and so on, each as four little-endian numbers.
  for (let block: Buffer = Buffer.alloc(32); ; ) {
    block = createHash('sha256').update(block).digest();
    for (let at = 0; at < 32; at += 8) yield block.readBigUInt64LE(at);
  }
}

it.each([
  [1000, 'be18b62b6f69cdab33a7e0dae0d9cfa869fda80ddc712221570f9f40a5878687'],
  [10_000, 'b9f7a8e75ef22a835685a52ccba7f7d6bdc99e34b010992cbc5864cd12be6892'],
])('the first %d numbers of the sequence are written as published', (count, published) => {
  const hash = createHash('sha256');
  let lines = 0;
  for (const value of sequence()) {
    bits[0] = value;
    const one = number[0]!;
    // The random ones that are no numbers, or zero, are left out.
    if (lines >= FIRST.trim().split(/\s+/).length && (one === 0 || !Number.isFinite(one))) continue;
    hash.update(`${value.toString(16)},${canonicalJson(one)}\n`);
    if (++lines === count) break;
  }
  expect(hash.digest('hex')).toBe(published);
});
