import { describe, expect, test } from 'vitest';
import { MOST_ISSUES, pathText } from '../../../src/pack/issues';
import { issuesOf, smallPack } from './support/packs';

/** A small pack with something at this place that doesn't belong there. */
function withPart(part: string, value: unknown): unknown {
  return { ...smallPack(), [part]: value };
}

function withAbout(about: Record<string, unknown>): unknown {
  const pack = smallPack();
  return { ...pack, about: { ...pack.about, ...about } };
}

const model = (parts: Record<string, unknown>) => withPart('models', [{ id: 'm', label: 'M', names: [], ...parts }]);

describe('each kind of issue says where, what is there and what is expected', () => {
  test.each<[string, unknown, { path: string; what: string; expected: string }]>([
    [
      'a missing text',
      withAbout({ licence: undefined }),
      { path: 'about.licence', what: 'nothing is there', expected: 'a text' },
    ],
    ['a wrong type', withAbout({ licence: 5 }), { path: 'about.licence', what: '5 is there', expected: 'a text' }],
    ['null', withAbout({ licence: null }), { path: 'about.licence', what: 'null is there', expected: 'a text' }],
    [
      'an object for a text',
      withAbout({ licence: {} }),
      { path: 'about.licence', what: 'an object is there', expected: 'a text' },
    ],
    [
      'a list for a text',
      withAbout({ licence: ['a', 'b'] }),
      { path: 'about.licence', what: 'a list of 2 is there', expected: 'a text' },
    ],
    ['a text for a list', withPart('models', 'all'), { path: 'models', what: '"all" is there', expected: 'a list' }],
    ['a text for an object', withPart('about', 'us'), { path: 'about', what: '"us" is there', expected: 'an object' }],
    [
      'a text for yes or no',
      withAbout({ demo: 'yes' }),
      { path: 'about.demo', what: '"yes" is there', expected: 'true or false' },
    ],
    [
      'a list for an object of names',
      withAbout({ sources: [] }),
      { path: 'about.sources', what: 'a list of 0 is there', expected: 'an object' },
    ],
    [
      'a fraction',
      withAbout({ edition: 1.5 }),
      { path: 'about.edition', what: '1.5 is there', expected: 'a whole number' },
    ],
    [
      'a number too small',
      withAbout({ edition: 0 }),
      { path: 'about.edition', what: '0 is there', expected: 'at least 1' },
    ],
    [
      'a number too large',
      model({ survival: 1.5 }),
      { path: 'models[0].survival', what: '1.5 is there', expected: 'at most 1' },
    ],
    [
      'a price of nothing',
      model({ launchPrice: { amount: 0, currency: 'GBP', year: 1950 } }),
      { path: 'models[0].launchPrice.amount', what: '0 is there', expected: 'more than 0' },
    ],
    [
      'an empty text',
      withAbout({ licence: '' }),
      { path: 'about.licence', what: '"" is there', expected: 'at least 1 character' },
    ],
    [
      'an empty list',
      withAbout({ covers: { thing: 'x', words: [] } }),
      { path: 'about.covers.words', what: 'a list of 0 is there', expected: 'at least 1 entry' },
    ],
    ['another version', withPart('schema', 2), { path: 'schema', what: '2 is there', expected: '1' }],
    [
      'a word that is not one of some',
      withPart('places', [{ host: 'a.example', field: 'sex', path: 'b' }]),
      {
        path: 'places[0].field',
        what: '"sex" is there',
        expected: 'one of "title", "description", "price", "serial", "condition", "place", "listedDate"',
      },
    ],
    [
      'a bad id',
      withAbout({ id: 'Big Id' }),
      {
        path: 'about.id',
        what: '"Big Id" is there',
        expected: 'an id: lower-case letters a-z, digits and inner hyphens',
      },
    ],
    [
      'a bad currency',
      withAbout({ currency: '£' }),
      {
        path: 'about.currency',
        what: '"£" is there',
        expected: 'a currency code of three capitals, such as GBP (ISO 4217)',
      },
    ],
    [
      'a bad language',
      withAbout({ language: 'English' }),
      { path: 'about.language', what: '"English" is there', expected: 'a language tag such as "en" or "pt-BR"' },
    ],
    [
      'a bad reference',
      model({ family: 'a/b/c' }),
      { path: 'models[0].family', what: '"a/b/c" is there', expected: 'an id, or packId/entryId' },
    ],
    [
      'an unknown key',
      withAbout({ licens: 'x' }),
      { path: 'about', what: 'unknown key "licens"', expected: 'a key of the pack format, or one that begins with x-' },
    ],
    [
      'an unknown key at the top',
      withPart('model', []),
      { path: '', what: 'unknown key "model"', expected: 'a key of the pack format, or one that begins with x-' },
    ],
    [
      'a bad key of an object',
      withAbout({ sources: { 'My Source': 'x' } }),
      {
        path: 'about.sources["My Source"]',
        what: 'the key "My Source" is there',
        expected: 'an id: lower-case letters a-z, digits and inner hyphens',
      },
    ],
    [
      'a pair with three entries',
      withPart('prices', { index: [{ currency: 'GBP', label: 'x', points: [['2024', 1, 2]] }] }),
      { path: 'prices.index[0].points[0]', what: 'a list of 3 is there', expected: 'at most 2 entries' },
    ],
    [
      'a pair with one entry',
      withPart('prices', { index: [{ currency: 'GBP', label: 'x', points: [['2024']] }] }),
      { path: 'prices.index[0].points[0]', what: 'a list of 1 is there', expected: 'at least 2 entries' },
    ],
    [
      'an attribute of no kind',
      withPart('attributes', [{ id: 'a', label: 'A', kind: 'colour' }]),
      { path: 'attributes[0].kind', what: '"colour" is there', expected: 'one of "choice", "yes-no", "measure"' },
    ],
    [
      'a text of another normal form',
      withAbout({ licence: 'cafe\u0301' }),
      { path: 'about.licence', what: '"cafe\u0301" is there', expected: 'text in Unicode normal form C' },
    ],
    [
      'half a character',
      withAbout({ licence: 'a\ud83d' }),
      {
        path: 'about.licence',
        what: '"a\\ud83d" is there',
        expected: 'text without half characters (lone surrogates)',
      },
    ],
  ])('%s', (_, pack, issue) => {
    expect(issuesOf(pack)).toEqual([issue]);
  });

  test('several at once, in the order of the format', () => {
    const issues = issuesOf(withAbout({ id: 'A', edition: 'x', currency: 'pounds' }));
    expect(issues.map((issue) => issue.path)).toEqual(['about.id', 'about.edition', 'about.currency']);
  });
});

describe('of several forms that a value may have, the one that is nearest is spoken of', () => {
  const facts = (fact: unknown) => issuesOf(model({ facts: { weight: fact } }));
  const means = (meaning: unknown) => issuesOf(withPart('wording', [{ id: 'w', words: ['w'], means: meaning }]));

  test('a value of no form: all the forms are named', () => {
    const [issue, ...others] = facts(null);
    expect(others).toEqual([]);
    expect(issue).toMatchObject({ path: 'models[0].facts.weight', what: 'null is there' });
    for (const form of ['a text', 'true or false', 'a number', 'a list', 'an object'])
      expect(issue?.expected).toContain(form);
  });

  test.each<[string, unknown, string, string]>([
    ['a range with a bad end', { from: 'x' }, 'models[0].facts.weight.from', 'a number'],
    [
      'a range with an unknown key',
      { from: 1, til: 2 },
      'models[0].facts.weight',
      'a key of the pack format, or one that begins with x-',
    ],
    ['a fact with a bad range', { is: { from: 'a' } }, 'models[0].facts.weight.is.from', 'a number'],
    [
      'a fact with a bad condition',
      { is: 1, when: { made: { from: 'then' } } },
      'models[0].facts.weight.when.made.from',
      'a number',
    ],
    [
      'a fact with a bad word',
      { is: 1, holds: 'mostly' },
      'models[0].facts.weight.holds',
      'one of "always", "usually"',
    ],
    [
      'a list with a bad id',
      ['iron', 'Cast Iron'],
      'models[0].facts.weight[1]',
      'an id: lower-case letters a-z, digits and inner hyphens',
    ],
    [
      'a list of facts with a bad one',
      [{ is: 1 }, { is: 2, holds: 'no' }],
      'models[0].facts.weight[1].holds',
      'one of "always", "usually"',
    ],
    [
      'a list of facts with unknown keys',
      [{ is: 1, a: 1, b: 1, c: 1 }],
      'models[0].facts.weight[0]',
      'a key of the pack format, or one that begins with x-',
    ],
  ])('%s', (_, fact, path, expected) => {
    expect(facts(fact)[0]).toMatchObject({ path, expected });
  });

  test('a meaning with one key too many is told of that key, not of another meaning', () => {
    expect(means({ attribute: 'weight', atMost: 8, unit: 'kg' })).toEqual([
      {
        path: 'wording[0].means',
        what: 'unknown key "unit"',
        expected: 'a key of the pack format, or one that begins with x-',
      },
    ]);
  });

  test('a meaning with several faults in one place is told of these', () => {
    expect(means({ made: { from: 'x', to: 'y', about: 1 } }).map((issue) => issue.path)).toEqual([
      'wording[0].means.made.from',
      'wording[0].means.made.to',
      'wording[0].means.made',
    ]);
  });

  test('a phrase with a bad language is told of the language', () => {
    const [issue] = issuesOf(withAbout({ covers: { thing: 'x', words: [{ text: 'x', lang: '??' }] } }));
    expect(issue).toMatchObject({ path: 'about.covers.words[0].lang', what: '"??" is there' });
  });

  test('a text in several languages with one empty is told of that one', () => {
    const [issue] = issuesOf(withAbout({ title: { en: 'x', de: '' } }));
    expect(issue).toEqual({ path: 'about.title.de', what: '"" is there', expected: 'at least 1 character' });
  });
});

describe('what can not be seen is shown', () => {
  test.each([
    ['a control', 'a\u0007b', '"a\\u0007b" is there'],
    ['a line feed', 'a\u0000b', '"a\\u0000b" is there'],
    ['a right-to-left override', 'a\u202eb', '"a\\u202eb" is there'],
    ['an isolate', 'a\u2066b', '"a\\u2066b" is there'],
    ['an Arabic letter mark', 'a\u061cb', '"a\\u061cb" is there'],
  ])('%s', (_, text, what) => {
    expect(issuesOf(withAbout({ licence: text }))[0]?.what).toBe(what);
  });

  test.each([
    ['an invisible letter', 'a\u3164b\u202e', '"a\\u3164b\\u202e" is there'],
    ['a tag character beyond the basic plane', '\u{e0041}\u202e', '"\\u{e0041}\\u202e" is there'],
    ['a line separator', 'a\u2028b\u202e', '"a\\u2028b\\u202e" is there'],
  ])('%s', (_, text, what) => {
    expect(issuesOf(withAbout({ licence: text }))[0]?.what).toBe(what);
  });

  test('in unknown keys', () => {
    expect(issuesOf(withAbout({ '\u202elicence': 1 }))[0]?.what).toBe('unknown key "\\u202elicence"');
  });

  test('in paths', () => {
    expect(issuesOf(withAbout({ sources: { 'a\u202eb': 'x' } }))[0]?.path).toBe('about.sources["a\\u202eb"]');
  });

  test('no issue carries a raw control, whatever the pack holds', () => {
    const raw = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/u;
    const nasty = '\u202e\u0000\u2028\u200f';
    const issues = issuesOf({
      [nasty]: 1,
      about: { [nasty]: 2, title: { [nasty]: nasty }, id: nasty },
      models: [{ facts: { [nasty]: nasty } }],
    });
    expect(issues.length).toBeGreaterThan(4);
    for (const issue of issues) expect(raw.test(JSON.stringify(Object.values(issue)))).toBe(false);
  });
});

describe('an answer stays small', () => {
  test('a long text is cut, and never in the middle of a character', () => {
    const [issue] = issuesOf(withAbout({ licence: '😀'.repeat(100_000) }));
    expect(issue?.expected).toBe('at most 2000 characters');
    expect(issue?.what.length).toBeLessThan(150);
    expect(issue?.what).toMatch(/^"(?:😀)+…" is there$/u);
  });

  test('a long key is cut in what and in path', () => {
    const key = 'k'.repeat(100_000);
    expect(issuesOf(withAbout({ [key]: 1 }))[0]?.what.length).toBeLessThan(150);
    expect(issuesOf(withAbout({ sources: { [`${key}!`]: 'x' } }))[0]?.path.length).toBeLessThan(150);
  });

  test('at most 200 issues: unknown keys', () => {
    const keys = Object.fromEntries(Array.from({ length: 5000 }, (_, i) => [`k${i}`, 1]));
    expect(issuesOf(withAbout(keys))).toHaveLength(MOST_ISSUES);
  });

  test('at most 200 issues: in many lists', () => {
    const bad = Array.from({ length: 150 }, () => ({ id: 'm', label: 'M', names: [1, 2, 3, 4] }));
    expect(issuesOf({ ...smallPack(), models: bad, types: bad })).toHaveLength(MOST_ISSUES);
  });
});

describe('pathText', () => {
  test.each([
    [[], ''],
    [['about'], 'about'],
    [['models', 3, 'facts', 'frame'], 'models[3].facts.frame'],
    [['models', 0, 'facts', 'trade/frame'], 'models[0].facts.trade/frame'],
    [['about', 'title', 'pt-BR'], 'about.title.pt-BR'],
    [['about', 'sources', ''], 'about.sources[""]'],
    [['a', 'b.c'], 'a["b.c"]'],
  ])('%j', (path, text) => {
    expect(pathText(path)).toBe(text);
  });
});
