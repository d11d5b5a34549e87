import { describe, expect, test } from 'vitest';
import type { Pack } from '../../../../src/pack/schema/index';
import type { Facts, When } from '../../../../src/pack/schema/models';
import { accepted, issuesOf, smallPack } from '../support/packs';

const attributes: Pack['attributes'] = [
  {
    id: 'frame',
    kind: 'choice',
    label: 'Frame',
    values: [
      { id: 'iron', label: 'iron' },
      { id: 'alloy', label: 'alloy' },
    ],
  },
  { id: 'free-arm', kind: 'yes-no', label: 'Free arm' },
  { id: 'weight', kind: 'measure', label: 'Weight', unit: 'kg' },
];

function withFacts(facts: Facts): Pack {
  return smallPack({
    attributes,
    models: [{ id: 'm', label: 'M', names: [], facts }],
    serials: { schemes: [{ id: 'k', prefix: 'K', digits: 5 }], runs: { scheme: [], first: [], last: [], models: [] } },
  });
}

describe('a value that the attribute can have', () => {
  test.each<Facts>([
    { frame: 'iron' },
    { frame: ['iron', 'alloy'] },
    { 'small/frame': 'iron' },
    { 'free-arm': true },
    { weight: 11 },
    { weight: { from: 10 } },
    { weight: { to: 10 } },
    { weight: { from: 10, to: 10 } },
    { weight: { is: { from: 10, to: 12 }, holds: 'usually' } },
    { frame: [{ is: 'iron', when: { made: { to: 1950 } } }, { is: 'alloy' }] },
  ])('%j', (facts) => {
    expect(accepted(withFacts(facts)).models?.[0]?.facts).toEqual(facts);
  });
});

describe('a value that the attribute can not have', () => {
  const choice = 'a value of the attribute "frame"';
  const yesNo = 'true or false, for "free-arm" is a yes-no attribute';
  const measure = 'a number or a range, for "weight" is a measure';

  test.each<[Facts, string, string]>([
    [{ frame: 'wood' }, '"wood" is there', choice],
    [{ frame: 'constructor' }, '"constructor" is there', choice],
    [{ frame: ['iron', 'wood'] }, '"wood" is there', choice],
    [{ frame: true }, 'true is there', choice],
    [{ frame: 3 }, '3 is there', choice],
    [{ frame: { from: 3 } }, 'an object is there', choice],
    [{ 'free-arm': 'yes' }, '"yes" is there', yesNo],
    [{ 'free-arm': ['yes'] }, 'a list of 1 is there', yesNo],
    [{ weight: 'heavy' }, '"heavy" is there', measure],
    [{ weight: false }, 'false is there', measure],
    [{ weight: ['heavy'] }, 'a list of 1 is there', measure],
    [{ weight: {} }, 'an object is there', 'a range with "from", "to" or both'],
    [{ weight: { from: 12, to: 10 } }, '12 to 10', 'the first no later than the last'],
    [{ weight: { is: { from: 12, to: 10 } } }, '12 to 10', 'the first no later than the last'],
  ])('%j', (facts, what, expected) => {
    expect(issuesOf(withFacts(facts))).toEqual([{ path: `models[0].facts.${Object.keys(facts)[0]}`, what, expected }]);
  });

  test('in a list of facts each is held by itself', () => {
    expect(
      issuesOf(withFacts({ frame: [{ is: 'wood' }, { is: 'iron' }, { is: 'tin' }] })).map((issue) => issue.what),
    ).toEqual(['"wood" is there', '"tin" is there']);
  });

  test("ranges of another pack's attribute are ordered too", () => {
    expect(issuesOf(withFacts({ 'other/weight': { from: 2, to: 1 } }))).toHaveLength(1);
  });
});

describe('a condition that can not be met', () => {
  const conditions: [string, When, string, string][] = [
    ['years', { made: { from: 1960, to: 1950 } }, '.made', '1960 to 1950'],
    ['numbers', { serials: [{ scheme: 'k', first: '200', last: '100' }] }, '.serials[0]', '"200" to "100"'],
    [
      'a number of another form',
      { serials: [{ scheme: 'k', first: 'B 20001', last: 'K20002' }] },
      '.serials[0].first',
      '"B 20001" is there',
    ],
    [
      'a number that is too long',
      { serials: [{ scheme: 'k', first: '1', last: '100000' }] },
      '.serials[0].last',
      '"100000" is there',
    ],
  ];

  test.each(conditions)('%s, of a fact', (_, when, path, what) => {
    expect(issuesOf(withFacts({ frame: { is: 'iron', when } }))[0]).toMatchObject({
      path: `models[0].facts.frame.when${path}`,
      what,
    });
  });

  test.each(conditions)('%s, of a variant', (_, when, path, what) => {
    const pack = withFacts({});
    pack.models![0]!.variants = [{ id: 'v', when, facts: {} }];
    expect(issuesOf(pack)[0]).toMatchObject({ path: `models[0].variants[0].when${path}`, what });
  });

  test('years made, of a model', () => {
    const pack = withFacts({});
    pack.models![0]!.made = { from: 1960, to: 1959 };
    expect(issuesOf(pack)[0]).toMatchObject({ path: 'models[0].made', what: '1960 to 1959' });
  });
});
