import { describe, expect, it } from 'vitest';
import { canonicalJson, isCanonical } from '../../src/sharing/seal/canonical';

/*
 * RFC 8785 (JSON Canonicalization Scheme). Sections 3.2.2 and 3.2.3 and the table of appendix B as several independent
 * test suites repeat them; the files are the test data of its authors (cyberphone/json-canonicalization on GitHub,
 * testdata, Apache License 2.0).
 */

describe('RFC 8785, the authors’ test files', () => {
  it.each([
    [
      'arrays',
      '[\n  56,\n  {\n    "d": true,\n    "10": null,\n    "1": [ ]\n  }\n]\n',
      '[56,{"1":[],"10":null,"d":true}]',
    ],
    [
      'french',
      '{"peach": "This sorting order", "p\u00e9ch\u00e9": "is wrong according to French", "p\u00eache": "but canonicalization MUST", "sin":   "ignore locale"}',
      '{"peach":"This sorting order","p\u00e9ch\u00e9":"is wrong according to French","p\u00eache":"but canonicalization MUST","sin":"ignore locale"}',
    ],
    [
      'structures',
      '{"1": {"f": {"f": "hi","F": 5} ,"\\n": 56.0}, "10": { }, "": "empty", "a": { }, "111": [ {"e": "yes","E": "no" } ], "A": { }}',
      '{"":"empty","1":{"\\n":56,"f":{"F":5,"f":"hi"}},"10":{},"111":[{"E":"no","e":"yes"}],"A":{},"a":{}}',
    ],
    ['unicode', '{"Unnormalized Unicode":"A\\u030a"}', '{"Unnormalized Unicode":"A\u030a"}'],
    [
      'values',
      '{"numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001], "string": "\\u20ac$\\u000F\\u000aA\'\\u0042\\u0022\\u005c\\\\\\"\\/", "literals": [null, true, false]}',
      '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"\u20ac$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}',
    ],
    [
      'weird',
      '{"\\u20ac": "Euro Sign", "\\r": "Carriage Return", "\\u000a": "Newline", "1": "One", "\\u0080": "Control\\u007f", "\\ud83d\\ude02": "Smiley", "\\u00f6": "Latin Small Letter O With Diaeresis", "\\ufb33": "Hebrew Letter Dalet With Dagesh", "</script>": "Browser Challenge"}',
      '{"\\n":"Newline","\\r":"Carriage Return","1":"One","</script>":"Browser Challenge","\u0080":"Control\u007f","\u00f6":"Latin Small Letter O With Diaeresis","\u20ac":"Euro Sign","\ud83d\ude02":"Smiley","\ufb33":"Hebrew Letter Dalet With Dagesh"}',
    ],
  ])('%s', (_name, input, output) => {
    expect(canonicalJson(JSON.parse(input))).toBe(output);
    expect(isCanonical(output)).toBe(true);
    expect(isCanonical(input)).toBe(input === output);
  });
});

describe('RFC 8785', () => {
  it('section 3.2.3: keys are sorted by UTF-16 code units', () => {
    const keys = ['\u20ac', '\r', '\ufb33', '1', '\ud83d\ude00', '\u0080', '\u00f6'];
    const sorted = ['\r', '1', '\u0080', '\u00f6', '\u20ac', '\ud83d\ude00', '\ufb33'];
    const text = canonicalJson(Object.fromEntries(keys.map((key) => [key, 0])));
    expect(text).toBe(`{${sorted.map((key) => `${JSON.stringify(key)}:0`).join(',')}}`);
  });

  it.each([
    ['0000000000000000', '0'],
    ['8000000000000000', '0'],
    ['0000000000000001', '5e-324'],
    ['8000000000000001', '-5e-324'],
    ['7fefffffffffffff', '1.7976931348623157e+308'],
    ['ffefffffffffffff', '-1.7976931348623157e+308'],
    ['4340000000000000', '9007199254740992'],
    ['c340000000000000', '-9007199254740992'],
    ['4430000000000000', '295147905179352830000'],
    ['44b52d02c7e14af5', '9.999999999999997e+22'],
    ['44b52d02c7e14af6', '1e+23'],
    ['44b52d02c7e14af7', '1.0000000000000001e+23'],
    ['444b1ae4d6e2ef4e', '999999999999999700000'],
    ['444b1ae4d6e2ef4f', '999999999999999900000'],
    ['444b1ae4d6e2ef50', '1e+21'],
    ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
    ['3eb0c6f7a0b5ed8d', '0.000001'],
    ['41b3de4355555553', '333333333.3333332'],
    ['41b3de4355555554', '333333333.33333325'],
    ['41b3de4355555555', '333333333.3333333'],
    ['41b3de4355555556', '333333333.3333334'],
    ['41b3de4355555557', '333333333.33333343'],
    ['becbf647612f3696', '-0.0000033333333333333333'],
    ['43143ff3c1cb0959', '1424953923781206.2'],
  ])('appendix B: the number of the bits %s is written %s', (bits, text) => {
    expect(canonicalJson(Buffer.from(bits, 'hex').readDoubleBE())).toBe(text);
  });

  it('appendix B: what is no number has no form', () => {
    for (const none of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])
      expect(() => canonicalJson(none)).toThrow();
  });

  it('section 3.2.2.2: half a character has no form', () => {
    expect(() => canonicalJson('\udead')).toThrow();
    expect(isCanonical('"\\udead"')).toBe(false);
  });

  it('text with repeated keys, spaces or another order is not canonical', () => {
    expect(isCanonical('{"a":1,"b":2}')).toBe(true);
    for (const text of ['{"b":2,"a":1}', '{"a":1,"a":1}', '{"a": 1}', '{"a":1.0}', '{"a":1}\n', '{'])
      expect(isCanonical(text)).toBe(false);
  });
});
