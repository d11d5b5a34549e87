import { describe, expect, test } from 'vitest';
import * as z from 'zod/mini';
import { list, table } from '../../../../src/pack/schema/lists';

const MANY = 200_000;

describe('list', () => {
  test('reads a list and answers the same list', () => {
    const value = ['a', 'b'];
    expect(list(z.string()).parse(value)).toBe(value);
  });

  test('says which entries are wrong', () => {
    const read = list(z.string()).safeParse(['a', 1, 'c', null]);
    expect(read.error?.issues.map((issue) => issue.path)).toEqual([[1], [3]]);
  });

  test('stops at 200 issues, however long the list', () => {
    const read = z.object({ words: list(z.string()) }).safeParse({ words: new Array(MANY).fill(0) });
    expect(read.error?.issues).toHaveLength(200);
    expect(read.error?.issues[199]?.path).toEqual(['words', 199]);
  });

  test('stops inside lists of lists too', () => {
    const rows = Array.from({ length: 300 }, () => new Array(300).fill(0));
    expect(list(list(z.string())).safeParse(rows).error?.issues).toHaveLength(200);
  });

  test('keeps checks that are put on it', () => {
    const some = list(z.string()).check(z.minLength(1));
    expect(some.safeParse([]).error?.issues[0]?.code).toBe('too_small');
    expect(some.safeParse([1]).error?.issues[0]?.path).toEqual([0]);
    expect(some.safeParse(['a']).success).toBe(true);
  });

  test.each([
    ['a text', 'abc'],
    ['an object', { length: 1 }],
    ['nothing', undefined],
    ['null', null],
  ])('is not %s', (_, value) => {
    expect(list(z.string()).safeParse(value).error?.issues[0]).toMatchObject({
      code: 'invalid_type',
      expected: 'array',
    });
  });

  test('is published with what its entries are', () => {
    expect(z.toJSONSchema(list(z.string()).check(z.minLength(1)))).toMatchObject({
      type: 'array',
      items: { type: 'string' },
      minItems: 1,
    });
  });
});

describe('table', () => {
  const numbers = table(z.string().check(z.regex(/^[a-z]+$/)), z.number());

  test('reads an object and answers the same object', () => {
    const value = { a: 1, constructor: 2 };
    expect(numbers.parse(value)).toBe(value);
  });

  test('says which keys and which values are wrong', () => {
    const read = numbers.safeParse({ a: 1, B: 2, c: 'x' });
    expect(read.error?.issues.map(({ code, path }) => ({ code, path }))).toEqual([
      { code: 'invalid_key', path: ['B'] },
      { code: 'invalid_type', path: ['c'] },
    ]);
  });

  test('stops at 200 issues, however many keys', () => {
    const wrong = Object.fromEntries(Array.from({ length: MANY }, (_, i) => [`K${i}`, 0]));
    expect(z.object({ facts: numbers }).safeParse({ facts: wrong }).error?.issues).toHaveLength(200);
  });

  test.each([
    ['a list', [1]],
    ['a text', 'a'],
    ['null', null],
  ])('is not %s', (_, value) => {
    expect(numbers.safeParse(value).error?.issues[0]).toMatchObject({ code: 'invalid_type', expected: 'record' });
  });

  test('is published with its keys and values', () => {
    expect(z.toJSONSchema(numbers)).toMatchObject({
      type: 'object',
      propertyNames: { pattern: '^[a-z]+$' },
      additionalProperties: { type: 'number' },
    });
  });
});
