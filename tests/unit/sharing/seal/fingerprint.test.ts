import { describe, expect, it } from 'vitest';
import { parsePack } from '../../../../src/pack/parse';
import {
  fingerprintFromSpoken,
  fingerprintOf,
  isFingerprint,
  spokenFingerprint,
} from '../../../../src/sharing/seal/fingerprint';
import { lookAlikes } from '../../../../src/sharing/seal/look-alike';
import { sealedId, splitId, withId } from '../../../../src/sharing/seal/pack-id';
import { fullPack, smallPack } from '../../pack/support/packs';

const fingerprint = await fingerprintOf('AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA');

describe('a fingerprint', () => {
  it('has 130 bits of the key’s hash, as letters and as digits', () => {
    expect(fingerprint).toHaveLength(26);
    expect(isFingerprint(fingerprint)).toBe(true);
    expect(spokenFingerprint(fingerprint)).toMatch(/^(\d{4} ){9}\d{4}$/);
    expect(spokenFingerprint('a'.repeat(26))).toBe(Array(10).fill('0000').join(' '));
    // 2 to the power of 130, less one.
    expect(spokenFingerprint('7'.repeat(26)).replaceAll(' ', '')).toBe((2n ** 130n - 1n).toString());
  });

  it('comes back from its digits, however they are written down', () => {
    const digits = spokenFingerprint(fingerprint);
    for (const written of [digits, digits.replaceAll(' ', ''), digits.replaceAll(' ', '-'), ` ${digits}\n`])
      expect(fingerprintFromSpoken(written)).toBe(fingerprint);
    for (const wrong of ['', '12', 'a'.repeat(40), '9'.repeat(40), digits.slice(5)])
      expect(fingerprintFromSpoken(wrong)).toBeNull();
  });
});

describe('the id of a sealed pack', () => {
  it('is its name and the founding key’s fingerprint', () => {
    const id = sealedId('selvage-bench', fingerprint);
    expect(splitId(id)).toEqual({ name: 'selvage-bench', founder: fingerprint });
    expect(splitId('selvage-bench')).toEqual({ name: 'selvage-bench', founder: null });
    expect(sealedId(id, fingerprint)).toBe(id);
    const long = sealedId(`${'a'.repeat(52)}-${'b'.repeat(20)}`, fingerprint);
    expect(long.length).toBeLessThanOrEqual(80);
    expect(splitId(long)).toEqual({ name: 'a'.repeat(52), founder: fingerprint });
  });

  it('takes the place of the old one in every reference, and in nothing else', () => {
    const own = (ref: string) => `${fullPack().about.id}/${ref}`;
    const [family] = fullPack().families!;
    const [model] = fullPack().models!;
    const whole = {
      ...fullPack(),
      models: [
        { ...model!, family: own(family!.id), label: own('not-a-reference'), facts: { [own('frame')]: 'iron' } },
        ...fullPack().models!.slice(1),
      ],
    };
    const renamed = withId(whole, 'new-name');
    expect(parsePack(JSON.stringify(renamed)).issues).toBeUndefined();
    expect(renamed.about.id).toBe('new-name');
    expect(renamed.models![0]).toMatchObject({
      ...{ family: `new-name/${family!.id}`, label: own('not-a-reference'), facts: { 'new-name/frame': 'iron' } },
    });
    expect(withId(withId(whole, 'new-name'), whole.about.id)).toEqual(whole);
    expect(withId(smallPack(), 'small')).toEqual(smallPack());
  });

  it('that looks like another one’s is found', () => {
    const known = ['selvage-bench', 'platen-circle', sealedId('corner-mill', fingerprint)];
    expect(lookAlikes('se1vage-bench', known)).toEqual(['selvage-bench']);
    expect(lookAlikes('selvagebench', known)).toEqual(['selvage-bench']);
    expect(lookAlikes(sealedId('platen-circle', fingerprint), known)).toEqual(['platen-circle']);
    expect(lookAlikes('comer-mill', known)).toEqual([known[2]]);
    expect(lookAlikes('platen-circle', known)).toEqual([]);
    expect(lookAlikes('platen-square', known)).toEqual([]);
  });
});
