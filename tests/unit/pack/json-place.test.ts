import { describe, expect, test } from 'vitest';
import { brokenAt, lineAndColumn } from '../../../src/pack/json-place';

describe('brokenAt', () => {
  test.each([
    ['{}', null],
    [' [1, -2.5e+3, "a\\u00e9\\n", true, false, null, {"a": []}] ', null],
    ['"text"', null],
    ['0', null],
    ['', 0],
    ['  ', 2],
    ['{', 1],
    ['{"a"', 4],
    ['{"a":', 5],
    ['{"a":1', 6],
    ['{"a":1,}', 7],
    ['[1,]', 3],
    ['[1 2]', 3],
    ['{a:1}', 1],
    ["{'a':1}", 1],
    ['{"a" 1}', 5],
    ['{"a":x}', 5],
    ['{"a":tru}', 8],
    ['{"a":01}', 6],
    ['{"a":1.}', 7],
    ['{"a":-}', 6],
    ['{"a":1e}', 7],
    ['{"a":+1}', 5],
    ['{"a":NaN}', 5],
    ['{"a":"b\nc"}', 7],
    ['{"a":"\\x"}', 7],
    ['{"a":"\\u12g4"}', 10],
    ['{"a":"b', 7],
    ['{"a":"b\\', 8],
    ['{"a":"\\u1', 9],
    ['{"a":1}}', 7],
    ['[1}', 2],
    ['{"a":1]', 6],
    ['// a\n{}', 0],
    ['{"a":1} x', 8],
    ['\u00a0{}', 0],
    ['{]', 1],
    ['[}', 1],
  ])('%j', (text, at) => {
    expect(brokenAt(text)).toBe(at);
  });

  test('deep nesting and long texts cost no stack', () => {
    expect(brokenAt('['.repeat(300_000))).toBe(300_000);
    expect(brokenAt(`"${'a'.repeat(1_000_000)}"`)).toBeNull();
  });
});

describe('lineAndColumn', () => {
  test.each([
    ['abc', 0, 1, 1],
    ['abc', 3, 1, 4],
    ['a\nbc', 1, 1, 2],
    ['a\nbc', 2, 2, 1],
    ['a\n\nbc', 4, 3, 2],
    ['a\r\nb', 3, 2, 1],
  ])('%j at %i', (text, at, line, column) => {
    expect(lineAndColumn(text, at)).toEqual({ line, column });
  });
});
