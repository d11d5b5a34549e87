import { describe, expect, test } from 'vitest';
import type { Pack } from '../../../../src/pack/schema/index';
import { accepted, fullPack, issuesOf, smallPack } from '../support/packs';

/** A pack with one entry of each part, that stands alone and extends nothing. */
function alone(): Pack {
  return smallPack(
    {
      attributes: [
        { id: 'frame', kind: 'choice', label: 'Frame', values: [{ id: 'iron', label: 'iron' }] },
        { id: 'weight', kind: 'measure', label: 'Weight', unit: 'kg' },
      ],
      families: [{ id: 'fam', label: 'F', names: [] }],
      models: [{ id: 'one', label: 'One', names: [] }],
      types: [{ id: 'kind', label: 'Kind', names: [] }],
      serials: {
        schemes: [{ id: 'k', prefix: 'K', digits: 5 }],
        runs: { scheme: ['k'], first: ['1'], last: ['9'], models: [['one']], source: [null] },
      },
      prices: { grades: [{ id: 'good', label: 'good' }] },
    },
    { sources: { page: 'a page' } },
  );
}

type Change = (pack: Pack) => void;
const model = (pack: Pack) => pack.models![0]!;
const band = { model: 'one', low: 1, high: 2, currency: 'GBP', date: '2026' };
const observation = { model: 'one', kind: 'asked', amount: 1, currency: 'GBP', date: '2026' } as const;
const photograph = { id: 'f', label: 'f', tells: 'f', ask: 'f' };
const series = { currency: 'GBP', label: 'x', points: [['2026', 1]] as [string, number][], source: 'nowhere' };

function issuesAfter(change: Change, about: Partial<Pack['about']> = {}) {
  const pack = alone();
  Object.assign(pack.about, about);
  change(pack);
  return issuesOf(pack);
}

const MODELS = "the id of one of this pack's models, or of the pack it extends";
const FAMILIES = "the id of one of this pack's families, or of the pack it extends";
const ATTRIBUTES = "the id of one of this pack's attributes, or of the pack it extends";
const SCHEMES = "the id of one of this pack's schemes, or of the pack it extends";
const GRADES = "the id of one of this pack's grades, or of the pack it extends";

const dangling: [string, Change, string, string][] = [
  [
    'the attribute that is asked about first',
    (p) => (p.about.covers.first = 'nowhere'),
    'about.covers.first',
    ATTRIBUTES,
  ],
  ['a family', (p) => (model(p).family = 'nowhere'), 'models[0].family', FAMILIES],
  ['a type', (p) => (model(p).type = 'nowhere'), 'models[0].type', MODELS],
  ['an attribute of a fact', (p) => (model(p).facts = { nowhere: 'x' }), 'models[0].facts.nowhere', ATTRIBUTES],
  [
    "an attribute of a family's fact",
    (p) => (p.families![0]!.facts = { nowhere: 1 }),
    'families[0].facts.nowhere',
    ATTRIBUTES,
  ],
  [
    'an attribute of a necessary fact',
    (p) => (p.families![0]!.necessary = { nowhere: 1 }),
    'families[0].necessary.nowhere',
    ATTRIBUTES,
  ],
  [
    'an attribute of a variant',
    (p) => (model(p).variants = [{ id: 'v', when: {}, facts: { nowhere: 1 } }]),
    'models[0].variants[0].facts.nowhere',
    ATTRIBUTES,
  ],
  ['an attribute of a type', (p) => (p.types![0]!.facts = { nowhere: 1 }), 'types[0].facts.nowhere', ATTRIBUTES],
  [
    'a model it is mistaken for',
    (p) => (model(p).mistakenFor = [{ model: 'nowhere', rate: 0.1 }]),
    'models[0].mistakenFor[0].model',
    MODELS,
  ],
  [
    'an attribute of a place to look',
    (p) => (model(p).where = { nowhere: 'below' }),
    'models[0].where.nowhere',
    ATTRIBUTES,
  ],
  [
    'an attribute of a picture',
    (p) =>
      (model(p).pictures = [
        { data: 'data:image/png;base64,AA==', shows: 'x', attribute: 'nowhere', credit: 'x', licence: 'x' },
      ]),
    'models[0].pictures[0].attribute',
    ATTRIBUTES,
  ],
  [
    'a scheme of a condition',
    (p) =>
      (model(p).facts = { frame: { is: 'iron', when: { serials: [{ scheme: 'nowhere', first: '1', last: '2' }] } } }),
    'models[0].facts.frame.when.serials[0].scheme',
    SCHEMES,
  ],
  ['a model of a run', (p) => (p.serials!.runs.models = [['one', 'nowhere']]), 'serials.runs.models[0]', MODELS],
  [
    'an attribute of a meaning',
    (p) => (p.wording = [{ id: 'w', words: ['w'], means: { attribute: 'nowhere', is: 'x' } }]),
    'wording[0].means.attribute',
    ATTRIBUTES,
  ],
  [
    'an attribute of a limit',
    (p) => (p.wording = [{ id: 'w', words: ['w'], means: { attribute: 'nowhere', atMost: 1 } }]),
    'wording[0].means.attribute',
    ATTRIBUTES,
  ],
  [
    'a model of a caution',
    (p) => (p.cautions = [{ id: 'c', text: 'c', models: ['one', 'nowhere'] }]),
    'cautions[0].models[1]',
    MODELS,
  ],
  [
    'an attribute of a caution',
    (p) => (p.cautions = [{ id: 'c', text: 'c', facts: [{ attribute: 'nowhere', is: 'x' }] }]),
    'cautions[0].facts[0].attribute',
    ATTRIBUTES,
  ],
  [
    'what a photograph settles',
    (p) => (p.photographs = [{ ...photograph, settles: ['frame', 'nowhere'] }]),
    'photographs[0].settles[1]',
    ATTRIBUTES,
  ],
  [
    'an attribute that a photograph is asked for by',
    (p) => (p.photographs = [{ ...photograph, facts: [{ attribute: 'nowhere', is: 'x' }] }]),
    'photographs[0].facts[0].attribute',
    ATTRIBUTES,
  ],
  ['a model of a band', (p) => (p.prices!.bands = [{ ...band, model: 'nowhere' }]), 'prices.bands[0].model', MODELS],
  ['a grade of a band', (p) => (p.prices!.bands = [{ ...band, grade: 'nowhere' }]), 'prices.bands[0].grade', GRADES],
  [
    'a model of an observation',
    (p) => (p.prices!.observations = [{ ...observation, model: 'nowhere' }]),
    'prices.observations[0].model',
    MODELS,
  ],
  [
    'a grade of an observation',
    (p) => (p.prices!.observations = [{ ...observation, grade: 'nowhere' }]),
    'prices.observations[0].grade',
    GRADES,
  ],
];

const unsourced: [string, Change, string][] = [
  ['an attribute', (p) => (p.attributes![0]!.source = 'nowhere'), 'attributes[0].source'],
  ['a family', (p) => (p.families![0]!.source = 'nowhere'), 'families[0].source'],
  ['a model', (p) => (model(p).source = 'nowhere'), 'models[0].source'],
  ['a type', (p) => (p.types![0]!.source = 'nowhere'), 'types[0].source'],
  ['a fact', (p) => (model(p).facts = { frame: { is: 'iron', source: 'nowhere' } }), 'models[0].facts.frame.source'],
  [
    'a variant',
    (p) => (model(p).variants = [{ id: 'v', when: {}, facts: {}, source: 'nowhere' }]),
    'models[0].variants[0].source',
  ],
  [
    'a launch price',
    (p) => (model(p).launchPrice = { amount: 1, currency: 'GBP', year: 1950, source: 'nowhere' }),
    'models[0].launchPrice.source',
  ],
  ['a batch', (p) => (model(p).batches = [{ size: 1, source: 'nowhere' }]), 'models[0].batches[0].source'],
  [
    'a part that fits',
    (p) => (model(p).fits = [{ id: 'f', label: 'f', words: [], kind: 'part', source: 'nowhere' }]),
    'models[0].fits[0].source',
  ],
  ['a scheme', (p) => (p.serials!.schemes[0]!.source = 'nowhere'), 'serials.schemes[0].source'],
  ['a run', (p) => (p.serials!.runs.source = ['nowhere']), 'serials.runs.source[0]'],
  ['a wording', (p) => (p.wording = [{ id: 'w', words: ['w'], source: 'nowhere' }]), 'wording[0].source'],
  ['a caution', (p) => (p.cautions = [{ id: 'c', text: 'c', source: 'nowhere' }]), 'cautions[0].source'],
  ['a photograph', (p) => (p.photographs = [{ ...photograph, source: 'nowhere' }]), 'photographs[0].source'],
  ['a term', (p) => (p.terms = [{ id: 't', label: 't', explain: 't', source: 'nowhere' }]), 'terms[0].source'],
  ['a band', (p) => (p.prices!.bands = [{ ...band, source: 'nowhere' }]), 'prices.bands[0].source'],
  [
    'an observation',
    (p) => (p.prices!.observations = [{ ...observation, source: 'nowhere' }]),
    'prices.observations[0].source',
  ],
  [
    'a factor',
    (p) => (p.prices!.factors = [{ id: 'f', label: 'f', kind: 'finish', times: 1, source: 'nowhere' }]),
    'prices.factors[0].source',
  ],
  ['an index', (p) => (p.prices!.index = [series]), 'prices.index[0].source'],
  ['wages', (p) => (p.prices!.wages = [series]), 'prices.wages[0].source'],
  [
    'a rate',
    (p) => (p.prices!.rates = [{ from: 'EUR', to: 'GBP', date: '2026', rate: 1, source: 'nowhere' }]),
    'prices.rates[0].source',
  ],
];

test('the pack these tests spoil is in order', () => {
  accepted(alone());
  accepted(fullPack());
});

describe('a reference that leads nowhere', () => {
  test.each(dangling)('%s', (_, change, path, expected) => {
    expect(issuesAfter(change)).toEqual([{ path, what: 'nothing is called "nowhere"', expected }]);
  });

  test.each(dangling)('%s of this pack, in full', (_, change, path) => {
    const spoilt = alone();
    change(spoilt);
    const full = JSON.stringify(spoilt).replaceAll('nowhere', 'small/nowhere');
    // Schemes and grades are named by their ids alone: "small/nowhere" is not one.
    expect(issuesOf(full)[0]?.path.replaceAll('small/nowhere', 'nowhere')).toBe(path);
  });

  test.each(dangling)('%s may lie in the pack that this one extends', (_, change) => {
    const pack = alone();
    pack.about.extends = 'base';
    change(pack);
    expect(accepted(pack)).toEqual(pack);
  });

  test('of another pack, named in full, is left to whoever installs that pack', () => {
    const pack = alone();
    model(pack).family = 'other/family';
    model(pack).facts = { 'other/frame': 'iron' };
    pack.serials!.runs.models = [['other/one']];
    expect(accepted(pack)).toEqual(pack);
  });

  test('a family is no model', () => {
    expect(issuesAfter((pack) => (model(pack).mistakenFor = [{ model: 'fam', rate: 0.1 }]))).toHaveLength(1);
  });

  test('a model may be of a type, and of this pack in full', () => {
    const pack = alone();
    model(pack).type = 'kind';
    model(pack).family = 'small/fam';
    expect(accepted(pack)).toEqual(pack);
  });

  test('a pack does not extend itself', () => {
    expect(issuesAfter(() => {}, { extends: 'small' })).toEqual([
      { path: 'about.extends', what: '"small" names itself', expected: 'the id of another pack' },
    ]);
  });
});

describe('a source that is not in about.sources', () => {
  test.each(unsourced)('of %s', (_, change, path) => {
    expect(issuesAfter(change)).toEqual([
      { path, what: 'nothing is called "nowhere"', expected: 'an id in about.sources' },
    ]);
  });

  test("is wrong though the pack extends another: sources are each pack's own", () => {
    expect(issuesAfter((pack) => (model(pack).source = 'nowhere'), { extends: 'base' })).toHaveLength(1);
  });
});
