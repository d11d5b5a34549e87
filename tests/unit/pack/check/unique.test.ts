import { describe, expect, test } from 'vitest';
import type { Pack } from '../../../../src/pack/schema/index';
import { accepted, issuesOf, smallPack } from '../support/packs';

const attribute = { id: 'a', kind: 'yes-no', label: 'A' } as const;
const model = { id: 'a', label: 'A', names: [] };
const scheme = { id: 'a', prefix: 'A', digits: 5 };
const noRuns = { scheme: [], first: [], last: [], models: [] };
const value = { id: 'a', label: 'A' };
const variant = { id: 'a', when: {}, facts: {} };
const part = { id: 'a', label: 'A', words: [] as string[], kind: 'part' as const };
const factor = { id: 'a', label: 'A', kind: 'finish', times: 1.1 } as const;

const photograph = { id: 'a', label: 'A', tells: 'A', ask: 'A' };
const term = { id: 'a', label: 'A', explain: 'A' };

describe('an id that stands twice', () => {
  test.each<[string, Partial<Pack>, string]>([
    ['attributes', { attributes: [attribute, attribute] }, 'attributes[1].id'],
    [
      'attributes of different kinds',
      { attributes: [attribute, { ...attribute, kind: 'measure', unit: 'kg' }] },
      'attributes[1].id',
    ],
    [
      'values',
      { attributes: [{ ...attribute, kind: 'choice', values: [value, value] }] },
      'attributes[0].values[1].id',
    ],
    ['families', { families: [model, model] }, 'families[1].id'],
    ['models', { models: [model, { ...model, id: 'b' }, model] }, 'models[2].id'],
    ['types', { types: [model, model] }, 'types[1].id'],
    ['a model and a type', { models: [model], types: [model] }, 'types[0].id'],
    ['a family and a model', { families: [model], models: [model] }, 'models[0].id'],
    ['schemes', { serials: { schemes: [scheme, scheme], runs: noRuns } }, 'serials.schemes[1].id'],
    [
      'wordings',
      {
        wording: [
          { id: 'a', words: ['a'] },
          { id: 'a', words: ['b'] },
        ],
      },
      'wording[1].id',
    ],
    [
      'cautions',
      {
        cautions: [
          { id: 'a', text: 'a' },
          { id: 'a', text: 'b' },
        ],
      },
      'cautions[1].id',
    ],
    ['photographs', { photographs: [photograph, photograph] }, 'photographs[1].id'],
    ['terms', { terms: [term, term] }, 'terms[1].id'],
    ['grades', { prices: { grades: [value, value] } }, 'prices.grades[1].id'],
    ['factors', { prices: { factors: [factor, factor] } }, 'prices.factors[1].id'],
    ['variants', { models: [{ ...model, variants: [variant, variant] }] }, 'models[0].variants[1].id'],
    ['parts that fit', { types: [{ ...model, fits: [part, part] }] }, 'types[0].fits[1].id'],
  ])('among %s', (_, parts, path) => {
    expect(issuesOf(smallPack(parts))).toEqual([
      { path, what: '"a" stands here a second time', expected: 'each id once' },
    ]);
  });

  test('the third time is told too', () => {
    expect(issuesOf(smallPack({ models: [model, model, model] })).map((issue) => issue.path)).toEqual([
      'models[1].id',
      'models[2].id',
    ]);
  });

  test('is no matter in spaces that no reference mixes', () => {
    const pack = smallPack({
      attributes: [
        attribute,
        { id: 'b', kind: 'choice', label: 'B', values: [value] },
        { id: 'c', kind: 'choice', label: 'C', values: [value] },
      ],
      models: [
        { ...model, variants: [variant] },
        { ...model, id: 'b', variants: [variant] },
      ],
      serials: { schemes: [scheme], runs: noRuns },
      wording: [{ id: 'a', words: ['a'] }],
      cautions: [{ id: 'a', text: 'a' }],
      photographs: [photograph],
      terms: [term],
      prices: { grades: [value], factors: [factor] },
    });
    expect(accepted(pack)).toEqual(pack);
  });
});
