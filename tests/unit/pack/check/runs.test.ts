import { describe, expect, test } from 'vitest';
import type { Runs, Scheme } from '../../../../src/pack/schema/serials';
import { accepted, issuesOf, smallPack } from '../support/packs';

const k5: Scheme = { id: 'k', prefix: 'K', digits: 5 };

function withRuns(runs: Partial<Runs>, schemes: Scheme[] = [k5]) {
  const whole = { scheme: ['k', 'k'], first: ['1', '11'], last: ['10', '20'], models: [['m'], ['m']], ...runs };
  return smallPack({ models: [{ id: 'm', label: 'M', names: [] }], serials: { schemes, runs: whole } });
}

describe('columns are of one length', () => {
  test.each<[keyof Runs, Partial<Runs>, number]>([
    ['first', { first: ['1'] }, 1],
    ['last', { last: [] }, 0],
    ['models', { models: [['m'], ['m'], ['m']] }, 3],
    ['year', { year: [1950] }, 1],
    ['date', { date: ['1950'] }, 1],
    ['place', { place: [null] }, 1],
    ['source', { source: [null, null, null] }, 3],
  ])('%s', (column, runs, length) => {
    expect(issuesOf(withRuns(runs))).toEqual([
      { path: `serials.runs.${column}`, what: `${length} entries`, expected: '2 entries, as many as in "scheme"' },
    ]);
  });

  test('a scheme too few makes every other column too long', () => {
    expect(issuesOf(withRuns({ scheme: ['k'] })).map((issue) => issue.path)).toEqual([
      'serials.runs.first',
      'serials.runs.last',
      'serials.runs.models',
    ]);
  });

  test('no runs at all is a table', () => {
    accepted(withRuns({ scheme: [], first: [], last: [], models: [] }));
  });
});

describe("numbers are of their scheme's form", () => {
  test.each(['K00001', 'K 00001', 'k-00001', '00001', '1', 'K.00/001'])('%s is one of K + 5 digits', (first) => {
    accepted(withRuns({ first: [first, '11'] }));
  });

  test.each(['100000', 'K1', 'K000001', 'L00001', 'K0000A', 'O0001', '00001K'])('%s is none', (first) => {
    expect(issuesOf(withRuns({ first: [first, '11'] }))).toEqual([
      {
        path: 'serials.runs.first[0]',
        what: `"${first}" is there`,
        expected: "a number of the scheme's form: K + 5 digits",
      },
    ]);
  });

  test('of both ends', () => {
    expect(issuesOf(withRuns({ first: ['1', 'x'], last: ['10', 'y'] })).map((issue) => issue.path)).toEqual([
      'serials.runs.first[1]',
      'serials.runs.last[1]',
    ]);
  });

  test('with a suffix and a width from-to', () => {
    const scheme: Scheme = { id: 'k', prefix: '', digits: [3, 4], suffix: 'B' };
    accepted(withRuns({ first: ['001B', '0011'], last: ['9999 b', '9999'] }, [scheme]));
    expect(issuesOf(withRuns({ first: ['01B', '11'] }, [scheme]))[0]?.expected).toBe(
      "a number of the scheme's form: 3 to 4 digits + B",
    );
  });

  test('a width that runs backwards is an issue of the scheme', () => {
    expect(issuesOf(withRuns({}, [{ ...k5, digits: [6, 4] }]))).toEqual([
      { path: 'serials.schemes[0].digits', what: '6 to 4', expected: 'the first no later than the last' },
    ]);
  });
});

describe('runs', () => {
  test('begin before they end', () => {
    expect(issuesOf(withRuns({ first: ['K00011', '11'] }))).toEqual([
      { path: 'serials.runs.first[0]', what: 'K00011 to 10', expected: 'the first no later than the last' },
    ]);
  });

  test('may hold one number, nest and overlap', () => {
    accepted(withRuns({ first: ['5', '5'], last: ['5', '9'] }));
    accepted(withRuns({ first: ['1', '5'], last: ['9', '20'] }));
  });

  test('are of a scheme of this pack, though it extends another', () => {
    const pack = withRuns({ scheme: ['k', 'other'] });
    pack.about.extends = 'base';
    expect(issuesOf(pack)).toMatchObject([{ path: 'serials.runs.scheme[1]', what: 'nothing is called "other"' }]);
  });

  test('no more than 200 issues', () => {
    const many = <T>(value: T) => new Array<T>(5000).fill(value);
    expect(
      issuesOf(withRuns({ scheme: many('k'), first: many('x'), last: many('y'), models: many(['m']) })),
    ).toHaveLength(200);
  });
});

test('a pack has 500 schemes at most: each serial of an advert is held against them all', () => {
  const schemes = Array.from({ length: 501 }, (_, i): Scheme => ({ ...k5, id: `k${i}` }));
  const none = { scheme: [], first: [], last: [], models: [] };
  accepted(withRuns(none, schemes.slice(1)));
  expect(issuesOf(withRuns(none, schemes))).toEqual([
    { path: 'serials.schemes', what: 'a list of 501 is there', expected: 'at most 500 entries' },
  ]);
});
