import { describe, expect, it } from 'vitest';
import { canonicalJson, isCanonical } from '../../src/sharing/seal/canonical';

/** RFC 8785 (JSON Canonicalization Scheme), sections 3.2.2 to 3.2.3 and appendix B; written from memory of the RFC. */
describe('RFC 8785', () => {
  it('section 3.2.2: the sample object, serialised', () => {
    const sample = JSON.parse(
      '{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],"string":"\\u20ac$\\u000F\\u000aA\'\\u0042\\u0022\\u005c\\\\\\"\\/","literals":[null,true,false]}',
    );
    expect(canonicalJson(sample)).toBe(
      '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}',
    );
  });

  it('section 3.2.3: keys are sorted by UTF-16 code units', () => {
    const keys = ['\u20ac', '\r', '\ufb33', '1', '\ud83d\ude00', '\u0080', '\u00f6'];
    const sorted = ['\r', '1', '\u0080', '\u00f6', '\u20ac', '\ud83d\ude00', '\ufb33'];
    const text = canonicalJson(Object.fromEntries(keys.map((key) => [key, 0])));
    expect(Object.keys(JSON.parse(text!)).sort()).toEqual([...sorted].sort());
    expect(text).toBe(`{${sorted.map((key) => `${JSON.stringify(key)}:0`).join(',')}}`);
  });

  it.each([
    [0, '0'],
    [-0, '0'],
    [5e-324, '5e-324'],
    [-5e-324, '-5e-324'],
    [1.7976931348623157e308, '1.7976931348623157e+308'],
    [9007199254740992, '9007199254740992'],
    [295147905179352830000, '295147905179352830000'],
    [9.999999999999997e22, '9.999999999999997e+22'],
    [1e23, '1e+23'],
    [1.0000000000000001e23, '1.0000000000000001e+23'],
    [999999999999999700000, '999999999999999700000'],
    [1e21, '1e+21'],
    [9.999999999999997e-7, '9.999999999999997e-7'],
    [0.000001, '0.000001'],
    [333333333.3333332, '333333333.3333332'],
    [333333333.33333325, '333333333.33333325'],
    [-0.0000033333333333333333, '-0.0000033333333333333333'],
    [1424953923781206.2, '1424953923781206.2'],
  ])('appendix B: %d is written %s', (number, text) => {
    expect(canonicalJson(number)).toBe(text);
  });

  it('text with repeated keys, spaces or another order is not canonical', () => {
    expect(isCanonical('{"a":1,"b":2}')).toBe(true);
    for (const text of ['{"b":2,"a":1}', '{"a":1,"a":1}', '{"a": 1}', '{"a":1.0}', '{"a":1}\n', '{'])
      expect(isCanonical(text)).toBe(false);
  });
});
