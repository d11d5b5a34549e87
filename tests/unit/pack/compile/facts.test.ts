import { describe, expect, test } from 'vitest';
import { allowedBy } from '../../../../src/pack/compile/facts';
import type { AttributeKnown } from '../../../../src/pack/knowledge';
import type { Attribute } from '../../../../src/pack/schema/attributes';
import type { Pack } from '../../../../src/pack/schema/index';
import type { FactValue, Model } from '../../../../src/pack/schema/models';
import { allowed, factsOf, knowing, modelOf } from '../support/knowledge';
import { smallPack } from '../support/packs';

const attributes: Attribute[] = [
  { id: 'frame', kind: 'choice', label: 'Frame', values: ['iron', 'alloy', 'steel'].map((id) => ({ id, label: id })) },
  { id: 'free-arm', kind: 'yes-no', label: 'Free arm' },
  { id: 'weight', kind: 'measure', label: 'Weight', unit: 'kg' },
];

function withModel(model: Partial<Model>, parts: Partial<Pack> = {}): Pack {
  return smallPack(
    { attributes, models: [{ id: 'm', label: 'M', names: [], ...model }], ...parts },
    { sources: { a: 'Source A', b: 'Source B' } },
  );
}

describe('of model, family and type the nearest speaks alone', () => {
  const family = {
    id: 'f',
    label: 'F',
    names: [],
    necessary: { frame: 'alloy' },
    facts: { frame: 'steel', weight: 12, 'free-arm': true },
  };
  const types = [{ id: 't', label: 'T', names: [], facts: { weight: 9, 'free-arm': false, frame: 'steel' } }];

  test("the model's own fact before its family's and its type's", () => {
    const known = knowing(
      withModel({ family: 'f', type: 't', facts: { frame: 'iron' } }, { families: [family], types }),
    );
    expect(allowed(factsOf(known, 'small/m', 'small/frame'))).toEqual(['iron']);
  });

  test("a family's necessary condition before its other facts", () => {
    const known = knowing(withModel({ family: 'f', type: 't' }, { families: [family], types }));
    expect(allowed(factsOf(known, 'small/m', 'small/frame'))).toEqual(['alloy']);
  });

  test("a family's fact before a type's", () => {
    const known = knowing(withModel({ family: 'f', type: 't' }, { families: [family], types }));
    expect(allowed(factsOf(known, 'small/m', 'small/weight'))).toEqual(['12..12']);
  });

  test("a type's fact where nobody nearer says anything", () => {
    const known = knowing(withModel({ type: 't', facts: { frame: 'iron' } }, { types }));
    expect(allowed(factsOf(known, 'small/m', 'small/weight'))).toEqual(['9..9']);
  });

  test('nothing where nobody says anything', () => {
    expect(factsOf(knowing(withModel({})), 'small/m', 'small/weight')).toEqual([]);
  });

  test('what is known at all, each attribute once', () => {
    const known = knowing(
      withModel({ family: 'f', type: 't', facts: { frame: 'iron' } }, { families: [family], types }),
    );
    expect([...modelOf(known, 'small/m').facts.keys()].sort()).toEqual([
      'small/frame',
      'small/free-arm',
      'small/weight',
    ]);
  });

  test('a family and a type of the pack that this one extends', () => {
    const base = smallPack({ attributes, families: [family], types }, { id: 'base' });
    const pack = smallPack(
      { models: [{ id: 'm', label: 'M', names: [], family: 'f', type: 'base/t', facts: { frame: 'iron' } }] },
      { extends: 'base' },
    );
    const known = knowing(pack, base);
    expect(allowed(factsOf(known, 'small/m', 'base/frame'))).toEqual(['iron']);
    expect(allowed(factsOf(known, 'small/m', 'base/weight'))).toEqual(['12..12']);
    expect(factsOf(known, 'small/m', 'base/weight')[0]).toMatchObject({ pack: 'base', entry: 'f' });
  });
});

describe('a fact says where it is from', () => {
  test("its own source, else its entry's, as a citation", () => {
    const facts = { frame: { is: 'iron', source: 'b' }, weight: 12 };
    const known = knowing(withModel({ source: 'a', facts }));
    expect(factsOf(known, 'small/m', 'small/frame')).toMatchObject([{ pack: 'small', entry: 'm', source: 'Source B' }]);
    expect(factsOf(known, 'small/m', 'small/weight')).toMatchObject([
      { pack: 'small', entry: 'm', source: 'Source A' },
    ]);
  });

  test("a family's fact is the family's entry, with its source", () => {
    const families = [{ id: 'f', label: 'F', names: [], facts: { weight: 12 }, source: 'b' }];
    const known = knowing(withModel({ family: 'f', source: 'a' }, { families }));
    expect(factsOf(known, 'small/m', 'small/weight')).toMatchObject([{ entry: 'f', source: 'Source B' }]);
  });

  test('no source is null', () => {
    expect(factsOf(knowing(withModel({ facts: { weight: 12 } })), 'small/m', 'small/weight')).toMatchObject([
      { source: null },
    ]);
  });

  test('whether it has exceptions', () => {
    const facts = {
      frame: { is: 'iron', holds: 'usually' as const },
      weight: { is: 12, holds: 'always' as const },
      'free-arm': true,
    };
    const known = knowing(withModel({ facts }));
    expect(['frame', 'weight', 'free-arm'].map((id) => factsOf(known, 'small/m', `small/${id}`)[0]?.always)).toEqual([
      false,
      true,
      true,
    ]);
  });
});

describe('facts that hold on a condition', () => {
  test('several facts of one attribute keep their order and conditions', () => {
    const facts = {
      frame: [
        { is: 'iron', when: { made: { to: 1950 } } },
        { is: 'alloy', when: { places: ['Hallowdene'] } },
        { is: 'steel' },
      ],
    };
    const known = factsOf(knowing(withModel({ facts })), 'small/m', 'small/frame');
    expect(allowed(known)).toEqual(['iron', 'alloy', 'steel']);
    expect(known.map((fact) => fact.when)).toEqual([{ made: { to: 1950 } }, { places: ['Hallowdene'] }, null]);
  });

  test("a variant's facts stand beside the nearest one, with the variant's condition and source", () => {
    const variants = [
      { id: 'late', when: { made: { from: 1955 } }, facts: { frame: 'alloy', weight: 9 }, source: 'b' },
    ];
    const known = knowing(withModel({ facts: { frame: 'iron' }, variants, source: 'a' }));
    const frame = factsOf(known, 'small/m', 'small/frame');
    expect(allowed(frame)).toEqual(['iron', 'alloy']);
    expect(frame.map(({ when, source }) => [when, source])).toEqual([
      [null, 'Source A'],
      [{ made: { from: 1955 } }, 'Source B'],
    ]);
    expect(allowed(factsOf(known, 'small/m', 'small/weight'))).toEqual(['9..9']);
  });

  test("a variant's fact does not silence what is inherited", () => {
    const families = [{ id: 'f', label: 'F', names: [], facts: { frame: 'iron' } }];
    const variants = [{ id: 'late', when: {}, facts: { frame: 'alloy' } }];
    expect(
      allowed(factsOf(knowing(withModel({ family: 'f', variants }, { families })), 'small/m', 'small/frame')),
    ).toEqual(['iron', 'alloy']);
  });

  test("a condition of its own narrows the variant's, and does not replace it", () => {
    const variants = [
      {
        id: 'late',
        when: { made: { from: 1955 } },
        facts: { frame: { is: 'alloy', when: { places: ['Hallowdene'] } } },
      },
    ];
    expect(factsOf(knowing(withModel({ variants })), 'small/m', 'small/frame')[0]?.when).toEqual({
      made: { from: 1955 },
      places: ['Hallowdene'],
    });
  });

  test("years of its own are cut to the variant's", () => {
    const facts = {
      frame: [
        { is: 'iron', when: { made: { from: 1950, to: 1958 } } },
        { is: 'alloy', when: { made: { from: 1957 } } },
      ],
    };
    const variants = [{ id: 'late', when: { made: { from: 1955, to: 1960 } }, facts }];
    expect(factsOf(knowing(withModel({ variants })), 'small/m', 'small/frame').map((fact) => fact.when)).toEqual([
      { made: { from: 1955, to: 1958 } },
      { made: { from: 1957, to: 1960 } },
    ]);
  });

  test('several variants of one attribute stand beside each other', () => {
    const variants = ['iron', 'alloy', 'steel'].map((frame, i) => ({
      id: frame,
      when: { made: { from: 1950 + i } },
      facts: { frame },
    }));
    expect(allowed(factsOf(knowing(withModel({ variants })), 'small/m', 'small/frame'))).toEqual([
      'iron',
      'alloy',
      'steel',
    ]);
  });
});

describe('allowedBy: what a value allows of its attribute', () => {
  const known = (def: Attribute): AttributeKnown => ({ ref: `p/${def.id}`, pack: 'p', id: def.id, def });
  const [frame, freeArm, weight] = attributes.map(known) as [AttributeKnown, AttributeKnown, AttributeKnown];

  test.each<[AttributeKnown, FactValue, unknown]>([
    [frame, 'iron', { kind: 'values', values: new Set(['iron']) }],
    [frame, ['iron', 'alloy'], { kind: 'values', values: new Set(['iron', 'alloy']) }],
    [frame, true, null],
    [frame, 1, null],
    [frame, { from: 1 }, null],
    [freeArm, false, { kind: 'yes-no', value: false }],
    [freeArm, 'yes', null],
    [freeArm, ['yes'], null],
    [weight, 12, { kind: 'range', from: 12, to: 12 }],
    [weight, { from: 10, to: 12 }, { kind: 'range', from: 10, to: 12 }],
    [weight, { from: 10 }, { kind: 'range', from: 10, to: Number.POSITIVE_INFINITY }],
    [weight, { to: 10 }, { kind: 'range', from: Number.NEGATIVE_INFINITY, to: 10 }],
    [weight, 'heavy', null],
    [weight, ['heavy'], null],
    [weight, true, null],
  ])('%o: %j', (attribute, is, expected) => {
    expect(allowedBy(is, attribute)).toEqual(expected);
  });
});

describe('a hostile pack', () => {
  const numbers = (count: number) => Array.from({ length: count }, (_, i) => i);

  test('of a family with 3,000 facts and 3,000 members costs what it holds, not their product', () => {
    const many = numbers(3000).map((i): Attribute => ({ id: `a${i}`, kind: 'yes-no', label: 'A' }));
    const families = [{ id: 'f', label: 'F', names: [], facts: Object.fromEntries(many.map(({ id }) => [id, true])) }];
    const models = numbers(3000).map((i) => ({ id: `m${i}`, label: 'M', names: [], family: 'f' }));
    const known = knowing(smallPack({ attributes: many, families, models }));
    const first = factsOf(known, 'small/m0', 'small/a7');
    expect(allowed(first)).toEqual(['yes']);
    // The very same facts: nothing is copied for each member.
    expect(factsOf(known, 'small/m2999', 'small/a7')).toBe(first);
  });

  test('of 30,000 variants of one attribute is compiled', () => {
    const many = numbers(30_000).map((i) => ({ id: `v${i}`, when: {}, facts: { frame: 'iron' } }));
    expect(factsOf(knowing(withModel({ variants: many })), 'small/m', 'small/frame')).toHaveLength(30_000);
  });
});
