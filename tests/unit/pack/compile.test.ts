import { describe, expect, test } from 'vitest';
import { compile } from '../../../src/pack/compile';
import { tokenise } from '../../../src/text/tokens';
import { allowed, factsOf, knowing, modelOf } from './support/knowledge';
import { fullPack, smallPack } from './support/packs';

const frame = (...values: string[]) => ({
  id: 'frame',
  kind: 'choice' as const,
  label: 'Frame',
  values: values.map((id) => ({ id, label: id, words: [id] })),
});

const model = { id: 'm', label: 'M', names: ['Ottermere 12'] };

describe('which packs speak', () => {
  test('none: nothing is known', () => {
    const known = compile([]);
    expect(known.packs).toEqual([]);
    expect(known.serials.find('K00001')).toEqual([]);
    expect(known.phrases.search(tokenise('sewing machine'))).toEqual([]);
  });

  test('of a pack given twice the higher edition, whichever came first', () => {
    const old = smallPack({ models: [{ ...model, label: 'old' }] }, { edition: 2 });
    const young = smallPack({ models: [{ ...model, label: 'young' }] }, { edition: 3 });
    for (const packs of [
      [old, young],
      [young, old],
    ]) {
      const known = knowing(...packs);
      expect(known.packs.map((pack) => pack.about.edition)).toEqual([3]);
      expect(modelOf(known, 'small/m').label).toBe('young');
      expect(known.nameList).toHaveLength(1);
    }
  });

  test('of one edition given twice the later one', () => {
    const labels = ['first', 'second'].map((label) => smallPack({ models: [{ ...model, label }] }));
    expect(modelOf(knowing(...labels), 'small/m').label).toBe('second');
  });

  test('a pack is known by its citations, cautions, photographs, terms, grades, rates and seal', () => {
    const full = fullPack();
    const known = compile([full, smallPack()], new Map([['ottermere', 'ab:cd']]));
    expect(known.packs[0]).toMatchObject({
      id: 'ottermere',
      about: full.about,
      cautions: full.cautions,
      photographs: full.photographs,
      terms: full.terms,
      grades: full.prices?.grades,
      rates: full.prices?.rates,
      factors: full.prices?.factors,
      index: full.prices?.index,
      wages: full.prices?.wages,
      sealedBy: 'ab:cd',
    });
    expect([...known.packs[0]!.citations]).toEqual([
      ['ledger', 'Works ledger, invented'],
      ['page', 'A page, invented'],
    ]);
    expect(known.packs[1]).toMatchObject({
      id: 'small',
      cautions: [],
      photographs: [],
      terms: [],
      grades: [],
      rates: [],
      factors: [],
      index: [],
      wages: [],
      sealedBy: null,
    });
  });
});

describe('packs stand beside each other', () => {
  const one = smallPack(
    { attributes: [frame('iron', 'alloy')], models: [{ ...model, facts: { frame: 'iron' } }] },
    { id: 'one' },
  );
  const two = smallPack(
    { attributes: [frame('alloy', 'wood')], models: [{ ...model, facts: { frame: 'alloy' } }] },
    { id: 'two' },
  );

  test('the same attribute id in two packs is two attributes', () => {
    const known = knowing(one, two);
    expect([...known.attributes.keys()]).toEqual(['one/frame', 'two/frame']);
    expect(allowed(factsOf(known, 'one/m', 'one/frame'))).toEqual(['iron']);
    expect(factsOf(known, 'one/m', 'two/frame')).toEqual([]);
    expect(allowed(factsOf(known, 'two/m', 'two/frame'))).toEqual(['alloy']);
  });

  test('a word that both know means what each says', () => {
    const found = knowing(one, two).phrases.search(tokenise('alloy'));
    const meant = found.map(({ value: { meaning } }) =>
      meaning.kind === 'value' ? [meaning.pack, meaning.attribute.ref, meaning.value] : [],
    );
    expect(meant.sort()).toEqual([
      ['one', 'one/frame', 'alloy'],
      ['two', 'two/frame', 'alloy'],
    ]);
  });

  test('a name that both know names both models', () => {
    const found = knowing(one, two).names.search(tokenise('an Ottermere 12, complete'));
    expect(found.map(({ value }) => ('model' in value.of ? value.of.model.ref : null)).sort()).toEqual([
      'one/m',
      'two/m',
    ]);
  });

  test('a pack that extends none takes nothing from another, though ids are the same', () => {
    const bare = smallPack({ models: [{ ...model, facts: { 'one/frame': 'iron' } }] }, { id: 'bare' });
    expect(allowed(factsOf(knowing(one, bare), 'bare/m', 'one/frame'))).toEqual(['iron']);
    expect(factsOf(knowing(one, bare), 'bare/m', 'bare/frame')).toEqual([]);
  });
});

describe('a pack that extends another', () => {
  const base = smallPack(
    {
      attributes: [frame('iron', 'alloy')],
      families: [{ id: 'fam', label: 'F', names: [] }],
      types: [{ id: 'kind', label: 'Kind', names: [], facts: { frame: 'iron' } }],
    },
    { id: 'base' },
  );
  const upper = smallPack(
    {
      models: [
        { ...model, family: 'fam', type: 'kind' },
        { id: 'n', label: 'N', names: [], facts: { frame: 'alloy' } },
      ],
      serials: {
        schemes: [{ id: 'k', prefix: 'K', digits: 5 }],
        runs: { scheme: ['k'], first: ['1'], last: ['9'], models: [['m', 'kind', 'nobody']] },
      },
      prices: {
        bands: [
          { model: 'kind', low: 1, high: 2, currency: 'GBP', date: '2026' },
          { model: 'm', low: 1, high: 2, currency: 'GBP', date: '2026' },
        ],
      },
    },
    { id: 'upper', extends: 'base' },
  );

  test("names the base's entries by their ids alone", () => {
    for (const known of [knowing(base, upper), knowing(upper, base)]) {
      expect(modelOf(known, 'upper/m').family?.ref).toBe('base/fam');
      expect(known.families.get('base/fam')?.models.map((one) => one.ref)).toEqual(['upper/m']);
      expect(allowed(factsOf(known, 'upper/m', 'base/frame'))).toEqual(['iron']);
      expect(allowed(factsOf(known, 'upper/n', 'base/frame'))).toEqual(['alloy']);
      expect(known.serials.find('K00005')[0]?.models).toEqual(['upper/m', 'base/kind', 'upper/nobody']);
      expect([...known.bands.keys()].sort()).toEqual(['base/kind', 'upper/m']);
    }
  });

  test('its own entry of that id comes first', () => {
    const own = smallPack({ ...upper, families: [{ id: 'fam', label: 'own', names: [] }] }, upper.about);
    expect(modelOf(knowing(base, own), 'upper/m').family?.ref).toBe('upper/fam');
  });

  test('without its base: what leads there is left out, the rest stays', () => {
    const known = knowing(upper);
    expect(modelOf(known, 'upper/m').family).toBeNull();
    expect([...modelOf(known, 'upper/m').facts.keys()]).toEqual([]);
    expect([...modelOf(known, 'upper/n').facts.keys()]).toEqual([]);
    expect(known.serials.find('K00005')[0]?.models).toContain('upper/m');
    expect(known.bands.get('upper/m')).toHaveLength(1);
    expect(known.names.search(tokenise('Ottermere 12'))).toHaveLength(1);
  });

  test('packs that extend each other in a circle', () => {
    const circle = [
      smallPack({ models: [model] }, { id: 'a', extends: 'b' }),
      smallPack({ models: [{ ...model, family: 'fam' }] }, { id: 'b', extends: 'a' }),
    ];
    expect([...knowing(...circle).models.keys()]).toEqual(['a/m', 'b/m']);
  });

  test('a type that is a model, and a model that is its own type', () => {
    const known = knowing(
      smallPack({ attributes: [frame('iron')], models: [{ ...model, type: 'm', facts: { frame: 'iron' } }] }),
    );
    expect(allowed(factsOf(known, 'small/m', 'small/frame'))).toEqual(['iron']);
  });
});

describe('models and types', () => {
  test('types are models without a brand', () => {
    const known = knowing(smallPack({ models: [model], types: [{ id: 't', label: 'T', names: [] }] }));
    expect([...known.models.values()].map(({ ref, isType }) => [ref, isType])).toEqual([
      ['small/m', false],
      ['small/t', true],
    ]);
  });

  test('a family knows its models and types', () => {
    const families = [{ id: 'f', label: 'F', names: [] }];
    const known = knowing(
      smallPack({
        families,
        models: [{ ...model, family: 'f' }],
        types: [{ id: 't', label: 'T', names: [], family: 'small/f' }],
      }),
    );
    expect(known.families.get('small/f')?.models.map((one) => one.ref)).toEqual(['small/m', 'small/t']);
  });
});

test('bands are numbered entries, by the model they are of, in order', () => {
  const band = (low: number, source?: string) => ({
    model: 'm',
    low,
    high: 99,
    currency: 'GBP',
    date: '2026',
    ...(source ? { source } : {}),
  });
  const known = knowing(
    smallPack({ models: [model], prices: { bands: [band(1), band(2, 'page')] } }, { sources: { page: 'A page' } }),
  );
  expect(known.bands.get('small/m')?.map(({ entry, source, def }) => [entry, source, def.low])).toEqual([
    ['band-1', null, 1],
    ['band-2', 'A page', 2],
  ]);
});

test('the pack with every field compiles', () => {
  const known = knowing(fullPack());
  expect([...known.models.keys()]).toEqual(['ottermere/m12', 'ottermere/m14', 'ottermere/upright']);
  expect(known.serials.find('K20120B').map((run) => run.models)).toEqual([
    ['ottermere/m12', 'ottermere/m14'],
    ['ottermere/m12'],
  ]);
});
