import { readdirSync, readFileSync } from 'node:fs';
import Ajv2020 from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { packJsonSchema } from '../../src/pack/json-schema';
import { parsePack } from '../../src/pack/parse';
import { Pack } from '../../src/pack/schema/index';
import { changed } from '../laws/pack-arbitrary/changed';
import { pack } from '../laws/pack-arbitrary/pack';
import { PATIENCE, TIMES } from '../laws/pack-arbitrary/times';
import { fullPack, smallPack } from '../unit/pack/support/packs';

// Source: JSON Schema draft 2020-12 (json-schema.org), as the validator ajv 8.20.0 of the npm registry reads it.
// Clubs check their packs with such tools: they must take what our reading takes, and refuse what its structure refuses.

const schema = packJsonSchema();
const ajv = new Ajv2020({ strict: true });
const validate = ajv.compile(schema);

const verdicts = (data: unknown) => ({ schema: validate(data), structure: Pack.safeParse(data).success });
const both = (taken: boolean) => ({ schema: taken, structure: taken });

test("the published schema is a schema by the draft's own", () => {
  expect(ajv.validateSchema(schema)).toBe(true);
});

describe('packs in order', () => {
  test('the least and the fullest', () => {
    expect(verdicts(smallPack())).toEqual(both(true));
    expect(verdicts(fullPack())).toEqual(both(true));
  });

  test.each(['src/pack/shipped/trade.json', ...readdirSync('fixtures/packs').map((name) => `fixtures/packs/${name}`)])(
    '%s',
    (path) => {
      expect(verdicts(JSON.parse(readFileSync(path, 'utf8')))).toEqual(both(true));
    },
  );

  test('any', PATIENCE, () => {
    fc.assert(
      fc.property(pack, (whole) => {
        expect(verdicts(JSON.parse(JSON.stringify(whole)))).toEqual(both(true));
      }),
      { numRuns: 200 * TIMES },
    );
  });
});

describe('packs with something changed', () => {
  const seen = { taken: 0, refused: 0 };
  const some = fc.oneof(
    { weight: 1, arbitrary: fc.constant(null).map(() => fullPack()) },
    { weight: 2, arbitrary: pack },
  );

  test('are taken by both or refused by both', PATIENCE, () => {
    fc.assert(
      fc.property(changed(some), (data) => {
        const verdict = verdicts(data);
        expect(verdict).toEqual(both(verdict.structure));
        seen[verdict.structure ? 'taken' : 'refused']++;
      }),
      { numRuns: 1000 * TIMES },
    );
  });

  test('were of both kinds', () => {
    expect(seen.taken).toBeGreaterThan(100);
    expect(seen.refused).toBeGreaterThan(100);
  });
});

// What reading refuses and the schema takes, with why. Nothing is known that is the other way round.
const withLicence = (licence: string) => smallPack({}, { licence });
const model = { id: 'm', label: 'M', names: [] };
const runs = { scheme: ['k'], first: ['2'], last: ['1'], models: [['m']] };
const scheme = { id: 'k', prefix: 'K', digits: 5 };
const EXCLUSIONS: [string, string, unknown][] = [
  ['text of another normal form', 'JSON Schema has no word for Unicode normal forms', withLicence('e\u0301')],
  [
    'text with half a character',
    'patterns of JSON Schema are matched by code point, where half a character can not be told',
    withLicence('a\ud83d'),
  ],
  ['text that turns the reading direction', 'left to reading, with the other checks of text', withLicence('a\u202eb')],
  ['text with control characters', 'left to reading, with the other checks of text', withLicence('a\u0007b')],
  [
    'a day that is not in the calendar',
    'a pattern that knew leap years could be read by nobody',
    smallPack({}, { expires: '1954-02-30' }),
  ],
  [
    'an id that stands twice',
    'uniqueItems compares whole entries, not one field',
    smallPack({ models: [model, model] }),
  ],
  [
    'a reference that leads nowhere',
    'JSON Schema does not follow references inside the data',
    smallPack({ models: [{ ...model, family: 'nowhere' }] }),
  ],
  [
    'a value that its attribute can not have',
    'the same',
    smallPack({ attributes: [{ id: 'a', kind: 'yes-no', label: 'A' }], models: [{ ...model, facts: { a: 'maybe' } }] }),
  ],
  [
    'columns of different length',
    'JSON Schema does not compare lengths',
    smallPack({ serials: { schemes: [scheme], runs: { ...runs, last: [] } } }),
  ],
  [
    'a run that ends before it begins',
    'JSON Schema does not compare values',
    smallPack({ models: [model], serials: { schemes: [scheme], runs } }),
  ],
  [
    'a band whose low is above its high',
    'the same',
    smallPack({ models: [model], prices: { bands: [{ model: 'm', low: 2, high: 1, currency: 'GBP', date: '2026' }] } }),
  ],
  [
    'a choice whose values lie within each other in a circle',
    'the same',
    smallPack({
      attributes: [
        {
          id: 'a',
          kind: 'choice',
          label: 'A',
          values: [
            { id: 'b', label: 'B', within: 'c' },
            { id: 'c', label: 'C', within: 'b' },
          ],
        },
      ],
    }),
  ],
  [
    'nesting beyond 24 levels under x-',
    'JSON Schema sets no depth to what it leaves open',
    JSON.parse(`{"x-a": ${'['.repeat(30)}${']'.repeat(30)}, ${JSON.stringify(smallPack()).slice(1)}`),
  ],
  [
    'a key __proto__ under x-',
    'to JSON Schema it is a key like any other',
    JSON.parse(`{"x-a": {"__proto__": 1}, ${JSON.stringify(smallPack()).slice(1)}`),
  ],
];

describe('left to reading, for JSON Schema can not say it', () => {
  test.each(EXCLUSIONS)('%s: %s', (_, _why, data) => {
    expect(validate(data)).toBe(true);
    // As its own text, in which a lone surrogate is written as an escape.
    expect(parsePack(JSON.stringify(data)).issues?.length).toBeGreaterThan(0);
  });
});
