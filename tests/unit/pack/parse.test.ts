import { describe, expect, test } from 'vitest';
import { accepted, fullPack, issuesOf, smallPack } from './support/packs';

const KNOWN_KEY = 'a key of the pack format, or one that begins with x-';

describe('a pack in order', () => {
  test('the least pack is taken as it is', () => {
    expect(accepted(smallPack())).toEqual(smallPack());
  });

  test('a pack with every field is taken as it is', () => {
    expect(accepted(fullPack())).toEqual(fullPack());
  });

  test('with a byte order mark', () => {
    expect(accepted(`\ufeff${JSON.stringify(smallPack())}`)).toEqual(smallPack());
  });

  test('with spaces and lines', () => {
    expect(accepted(`\n ${JSON.stringify(smallPack(), null, 2)}\n\n`)).toEqual(smallPack());
  });

  test('keys that begin with x- are kept, whatever is in them', () => {
    const pack = smallPack();
    const extended = { ...pack, 'x-tool': { a: [1, { b: null }] }, about: { ...pack.about, 'x-': '\u0000' } };
    expect(accepted(extended)).toEqual(extended);
  });
});

describe('what is not JSON is told with its place', () => {
  test.each([
    ['', 'the text ends too soon, in line 1'],
    ['{"schema": 1,\n "about": {', 'the text ends too soon, in line 2'],
    ['{"schema": 1,\n "about": {},\n}', '"}" stands at line 3, column 1, where it can\'t stand in JSON'],
    ['{"schema": 1 "about": {}}', '"\\"" stands at line 1, column 14, where it can\'t stand in JSON'],
    ["{'schema': 1}", '"\'" stands at line 1, column 2, where it can\'t stand in JSON'],
    ['{"a": "\u0001"}', '"\\u0001" stands at line 1, column 8, where it can\'t stand in JSON'],
    ['{"a": \u202e1}', '"\\u202e" stands at line 1, column 7, where it can\'t stand in JSON'],
    ['{"a": 😀}', '"😀" stands at line 1, column 7, where it can\'t stand in JSON'],
    ['<!doctype html>', '"<" stands at line 1, column 1, where it can\'t stand in JSON'],
    ['\ufeff\ufeff{}', '"\\ufeff" stands at line 1, column 1, where it can\'t stand in JSON'],
  ])('%j', (text, what) => {
    expect(issuesOf(text)).toEqual([{ path: '', what, expected: 'one JSON object' }]);
  });
});

describe('what is JSON but no pack', () => {
  test.each([
    ['[]', 'a list of 0 is there'],
    ['[{"schema": 1}]', 'a list of 1 is there'],
    ['null', 'null is there'],
    ['1', '1 is there'],
    ['"pack"', '"pack" is there'],
    ['"\u202e"', '"\\u202e" is there'],
  ])('%s', (text, what) => {
    expect(issuesOf(text)).toEqual([{ path: '', what, expected: 'a pack: a JSON object with "schema": 1' }]);
  });

  test('an empty object lacks what every pack has', () => {
    expect(issuesOf('{}').map((issue) => issue.path)).toEqual(['schema', 'about']);
  });
});

describe('hostile shapes', () => {
  test('nesting beyond 24 levels is refused before anything else', () => {
    const nested = (levels: number) =>
      `{"x-deep": ${'['.repeat(levels)}${']'.repeat(levels)}, ${JSON.stringify(smallPack()).slice(1)}`;
    accepted(nested(23));
    expect(issuesOf(nested(24))).toEqual([
      { path: '', what: 'deeper nesting', expected: 'at most 24 levels of nesting' },
    ]);
    expect(issuesOf(nested(200_000))[0]?.what).toBe('deeper nesting');
  });

  test.each([
    ['at the top', '{"__proto__": {"polluted": true}, "schema": 1}'],
    ['inside', '{"schema": 1, "about": {"covers": {"__proto__": []}}}'],
    ['under x-', '{"schema": 1, "x-a": [{"__proto__": 1}]}'],
    ['written with escapes', '{"\\u005f_proto__": {"polluted": true}}'],
  ])('a key __proto__ %s', (_, text) => {
    expect(issuesOf(text)).toEqual([{ path: '', what: 'unknown key "__proto__"', expected: KNOWN_KEY }]);
    expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
  });

  test('keys that objects inherit are unknown keys', () => {
    const pack = smallPack();
    const keys = ['constructor', 'hasOwnProperty', 'toString', 'valueOf'];
    const issues = issuesOf({ ...pack, about: { ...pack.about, ...Object.fromEntries(keys.map((key) => [key, 1])) } });
    expect(issues).toEqual(keys.map((key) => ({ path: 'about', what: `unknown key "${key}"`, expected: KNOWN_KEY })));
  });

  test('an id may be a word that objects inherit', () => {
    const pack = smallPack({
      attributes: [{ id: 'constructor', kind: 'yes-no', label: 'Constructor' }],
      models: [{ id: 'constructor', label: 'C', names: [], facts: { constructor: true } }],
    });
    expect(accepted(pack)).toEqual(pack);
  });

  test('an inherited word that is no entry leads nowhere', () => {
    const models = [{ id: 'm', label: 'M', names: [], facts: { constructor: true } }];
    expect(issuesOf(smallPack({ models }))[0]?.what).toBe('nothing is called "constructor"');
  });

  test.each([
    ['ids', (text: string) => ({ id: text })],
    ['texts', (text: string) => ({ licence: text })],
    ['languages', (text: string) => ({ language: `en${'-ab'.repeat(text.length / 3)}!` })],
    ['addresses', (text: string) => ({ sources: { a: { text: 'a', url: `https://${text} ` } } })],
  ])('a text of a million units for %s is an issue', (_, about) => {
    const pack = smallPack();
    const issues = issuesOf({ ...pack, about: { ...pack.about, ...about('a-'.repeat(500_000)) } });
    expect(issues.length).toBeGreaterThan(0);
    for (const issue of issues) expect(issue.what.length).toBeLessThan(150);
  });

  test.each([
    ['runs', { serials: { schemes: [], runs: { scheme: zeros(), first: [], last: [], models: [] } } }],
    ['words', { wording: [{ id: 'w', words: zeros() }] }],
    ['values of a fact', { models: [{ id: 'm', label: 'M', names: [], facts: { frame: zeros().map(() => '!') } }] }],
    [
      'facts',
      {
        models: [{ id: 'm', label: 'M', names: [], facts: Object.fromEntries(zeros().map((_, i) => [`a${i}`, null])) }],
      },
    ],
  ])('200,000 wrong %s are told by 200 issues, without a crash', (_, parts) => {
    expect(issuesOf({ ...smallPack(), ...parts })).toHaveLength(200);
  });

  test('200,000 references that lead nowhere are told by 200 issues', () => {
    const scheme = zeros().map(() => 'k');
    const first = zeros().map(() => '1');
    const models = zeros().map(() => ['nobody']);
    const schemes = [{ id: 'k', prefix: '', digits: 5 }];
    expect(issuesOf(smallPack({ serials: { schemes, runs: { scheme, first, last: first, models } } }))).toHaveLength(
      200,
    );
  });
});

function zeros(): unknown[] {
  return new Array(200_000).fill(0);
}

describe('numbers', () => {
  const factText = (number: string) =>
    JSON.stringify(
      smallPack({
        attributes: [{ id: 'w', kind: 'measure', label: 'W', unit: 'kg' }],
        models: [{ id: 'm', label: 'M', names: [], facts: { w: 1 } }],
      }),
    ).replace('"w":1', `"w":${number}`);

  test.each(['1e308', '-1e308', '1e-320', '0.1', '-0', '123456789012345678901234567890'])(
    '%s is a number',
    (number) => {
      expect(accepted(factText(number)).models?.[0]?.facts?.w).toBe(Number(number));
    },
  );

  test.each(['1e309', '-1e400'])('%s, beyond what a number holds, is an issue', (number) => {
    expect(issuesOf(factText(number))[0]?.path).toBe('models[0].facts.w');
  });

  test.each(['1e21', '9007199254740993', '1e309', '1.5', '-1', '0'])('an edition of %s is an issue', (edition) => {
    expect(issuesOf(JSON.stringify(smallPack()).replace('"edition":1', `"edition":${edition}`))[0]?.path).toBe(
      'about.edition',
    );
  });
});

describe('ids are lower-case ASCII', () => {
  test.each([
    ['Cyrillic а', 'sm\u0430ll'],
    ['full width', 'ｓmall'],
    ['dotless i', 'sıngle'],
    ['Kelvin sign', '\u212a12'],
    ['capitals', 'Small'],
    ['an accent', 'café'],
    ['a space', 'a b'],
    ['a slash', 'a/b'],
    ['a dot', 'a.b'],
    ['a hyphen at the start', '-a'],
    ['a hyphen at the end', 'a-'],
    ['a line feed at the end', 'a\n'],
    ['a zero-width space', 'a\u200bb'],
    ['nothing', ''],
    ['81 letters', 'a'.repeat(81)],
  ])('%s is none', (_, id) => {
    expect(issuesOf(smallPack({}, { id }))[0]?.path).toBe('about.id');
  });

  test.each(['a', '0', 'a-b', 'a--b', '12', 'a'.repeat(80)])('%s is one', (id) => {
    expect(accepted(smallPack({}, { id })).about.id).toBe(id);
  });
});

describe('dates', () => {
  const withDate = (expires: string) => smallPack({}, { expires });

  test.each(['1954', '1954-03', '1954-03-17', '2000-02-29', '2024-02-29', '1999-12-31'])('%s is a date', (date) => {
    expect(accepted(withDate(date)).about.expires).toBe(date);
  });

  test.each([
    '54',
    '1954-3',
    '1954-13',
    '1954-00',
    '1954-03-00',
    '1954-03-32',
    '17.03.1954',
    '1954-03-17T00:00',
    '1954-03-17\n',
    '',
  ])('%j is not of the form', (date) => {
    expect(issuesOf(withDate(date))[0]).toMatchObject({
      path: 'about.expires',
      expected: 'a date: 1954, 1954-03 or 1954-03-17',
    });
  });

  test.each(['1954-02-30', '1954-02-29', '1900-02-29', '2023-04-31', '2023-06-31', '2023-09-31', '2023-11-31'])(
    '%s is not in the calendar',
    (date) => {
      expect(issuesOf(withDate(date))).toEqual([
        { path: 'about.expires', what: `"${date}" is there`, expected: 'a day that is in the calendar' },
      ]);
    },
  );
});

describe('texts that people see are clean', () => {
  const withText = (text: string) =>
    smallPack({}, { sources: { page: { text: 'a page', url: `https://example.invalid/${text}` } } });

  test.each(['\u202e', '\u200f', '\u2066', '\u0007', '\ud800', 'e\u0301'])('an address with %j is an issue', (text) => {
    expect(issuesOf(withText(text))[0]?.path).toBe('about.sources.page.url');
  });

  test.each(['http://example.invalid', 'javascript:alert(1)', 'https://', 'https://a b', ' https://a'])(
    '%j is no address',
    (url) => {
      expect(issuesOf(smallPack({}, { sources: { page: { text: 'a page', url } } }))[0]).toMatchObject({
        path: 'about.sources.page.url',
        expected: 'an address that begins with https://',
      });
    },
  );

  test('the language of a name is a language', () => {
    const models = [{ id: 'm', label: 'M', names: [{ text: 'M', lang: '\u202e' }] }];
    expect(issuesOf(smallPack({ models }))[0]?.path).toBe('models[0].names[0].lang');
  });
});
