import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BELIEF, COPIES, FIRM_SHARE, NAME_ASTRAY, NAMED, SHARES } from '../../src/identify/assumptions';
import { identify } from '../../src/identify/identify';
import { knowledgeOf, readingWith } from '../unit/identify/support/small';

/**
 * The posterior against exact enumeration: the story of how an advert comes about is told once more, by itself and
 * without any short cut, and every way it can go is added up (Bayes' theorem by the table of the whole joint
 * distribution). What the thing is; what the seller takes it for; whether he copies that one's list; what value the very
 * machine has in each feature; what he says of it; what the viewer sees.
 */
const VALUES = ['x', 'y', 'z'];
const IDS = ['a', 'b'];
const NONE = 'none';

interface World {
  /** Three models: the first two are of one family; the last type is the type of the first model. */
  models: {
    id: string;
    number: number;
    family: string | null;
    type: string | null;
    facts: number[];
    mistaken: Record<string, number>;
  }[];
  types: { id: string; facts: number[] }[];
  seller: number;
  eye: number;
  called: string | null;
  said: (number | null)[];
  seen: (number | null)[];
}

const facts = fc.array(fc.nat(2), { minLength: 2, maxLength: 2 });
const maybe = fc.array(fc.option(fc.nat(2)), { minLength: 2, maxLength: 2 });
const worlds: fc.Arbitrary<World> = fc
  .record({
    numbers: fc.array(fc.integer({ min: 100, max: 100_000 }), { minLength: 3, maxLength: 3 }),
    facts: fc.array(facts, { minLength: 5, maxLength: 5 }),
    rate: fc.double({ min: 0, max: 0.3, noNaN: true }),
    seller: fc.double({ min: 0.4, max: 0.95, noNaN: true }),
    eye: fc.double({ min: 0.5, max: 0.98, noNaN: true }),
    called: fc.option(fc.constantFrom('m-0', 'm-1', 'm-2')),
    said: maybe,
    seen: maybe,
  })
  .map(({ numbers, facts: all, rate, ...rest }) => ({
    models: [
      { id: 'm-0', number: numbers[0]!, family: 'kin', type: 't-0', facts: all[0]!, mistaken: { 'm-2': rate } },
      { id: 'm-1', number: numbers[1]!, family: 'kin', type: 't-1', facts: all[1]!, mistaken: {} },
      { id: 'm-2', number: numbers[2]!, family: 'other', type: null, facts: all[2]!, mistaken: { 'm-0': rate / 2 } },
    ],
    types: [
      { id: 't-0', facts: all[3]! },
      { id: 't-1', facts: all[4]! },
    ],
    ...rest,
  }));

/** P(it is this), before anything is known. */
function priors({ models, types }: World): Map<string, number> {
  const made = models.reduce((sum, { number }) => sum + number, 0);
  return new Map([
    ...models.map(({ id, number }): [string, number] => [id, (SHARES.known * number) / made]),
    ...types.map(({ id }): [string, number] => [id, SHARES.type / types.length]),
    [NONE, SHARES.none],
  ]);
}

/** P(taken for B | it is M); null: for no model in particular. */
function beliefs(world: World, truth: string): Map<string | null, number> {
  const prior = priors(world);
  const own = world.models.find(({ id }) => id === truth);
  const others = world.models.filter(({ id }) => id !== truth);
  const out = new Map<string | null, number>();
  const give = (to: string | null, share: number) => out.set(to, (out.get(to) ?? 0) + share);
  const sum = (some: World['models']) => some.reduce((all, { id }) => all + prior.get(id)!, 0);
  if (own) {
    for (const [id, rate] of Object.entries(own.mistaken)) give(id, rate);
    const kin = others.filter(({ family }) => family === own.family);
    for (const { id } of kin) give(id, (BELIEF.sister * prior.get(id)!) / sum(kin));
    for (const { id } of others) give(id, (BELIEF.any * prior.get(id)!) / sum(others));
  } else {
    const alike = others.filter(({ type }) => type === truth);
    const most = BELIEF.mistakenMost / sum(alike);
    for (const { id } of alike)
      give(id, BELIEF.passedOff * BELIEF.alike * Math.min(1 / prior.get(truth)!, most) * prior.get(id)!);
    for (const { id } of others) give(id, BELIEF.passedOff * (1 - BELIEF.alike) * prior.get(id)!);
  }
  const strayed = [...out.values()].reduce((all, one) => all + one, 0);
  give(null, (own ? BELIEF.vague : 1) * (1 - strayed));
  if (own) give(truth, (1 - BELIEF.vague) * (1 - strayed));
  return out;
}

/** P(the advert calls it so, or by no name | taken for B, it is M). */
function naming(world: World, taken: string | null, truth: string): number {
  if (world.called !== null)
    return taken === world.called ? 1 - NAME_ASTRAY : NAME_ASTRAY * priors(world).get(world.called)!;
  const isKnown = taken !== null || world.models.some(({ id }) => id === truth);
  return (taken === null ? 1 : 1 - NAMED.model) * (isKnown ? 1 - NAMED.maker : 1);
}

/** P(a machine of this kind has this value). */
function has(world: World, kind: string, attribute: number, value: number): number {
  const one = [...world.models, ...world.types].find(({ id }) => id === kind);
  if (!one) return 1 / VALUES.length;
  return one.facts[attribute] === value ? FIRM_SHARE : (1 - FIRM_SHARE) / (VALUES.length - 1);
}

const tells = (reliable: number, value: number, told: number | null): number =>
  told === null ? 1 : told === value ? reliable : (1 - reliable) / (VALUES.length - 1);

/** P(advert and answers, it is this), every way it can have come about added up. */
function joint(world: World, truth: string): number {
  let all = 0;
  for (const [taken, belief] of beliefs(world, truth)) {
    const isMistaken = taken !== null && taken !== truth;
    for (const copies of isMistaken ? [true, false] : [false])
      for (let own = 0; own < 9; own++)
        for (let listed = 0; listed < (copies ? 9 : 1); listed++) {
          let way = priors(world).get(truth)! * belief * naming(world, taken, truth);
          if (isMistaken) way *= copies ? COPIES : 1 - COPIES;
          IDS.forEach((_, a) => {
            const value = a === 0 ? own % 3 : Math.floor(own / 3);
            const copied = a === 0 ? listed % 3 : Math.floor(listed / 3);
            way *= has(world, truth, a, value) * tells(world.eye, value, world.seen[a]!);
            if (copies) way *= has(world, taken!, a, copied);
            way *= tells(world.seller, copies ? copied : value, world.said[a]!);
          });
          all += way;
        }
  }
  return all;
}

function computed(world: World): Map<string, number> {
  const factsOf = (of: number[]) => Object.fromEntries(IDS.map((id, a) => [id, VALUES[of[a]!]!]));
  const knowledge = knowledgeOf({
    attributes: { a: VALUES, b: VALUES },
    trust: { seller: world.seller, eye: world.eye },
    families: ['kin', 'other'],
    models: world.models.map(({ id, number, family, type, facts: of, mistaken }) => ({
      ...{ id, number, survival: 1, facts: factsOf(of) },
      ...(family ? { family } : {}),
      ...(type ? { type } : {}),
      mistakenFor: Object.entries(mistaken).map(([model, rate]) => ({ model, rate })),
    })),
    types: world.types.map(({ id, facts: of }) => ({ id, facts: factsOf(of) })),
  });
  const claims = IDS.flatMap((id, a) => (world.said[a] === null ? [] : [[id, VALUES[world.said[a]!]!] as const]));
  const answers = Object.fromEntries(
    IDS.flatMap((id, a) => (world.seen[a] === null ? [] : [[`small/${id}`, VALUES[world.seen[a]!]!]])),
  );
  const reading = readingWith(knowledge, claims, world.called);
  const { evidence, posterior } = identify({ reading, serial: null, answers }, knowledge);
  return new Map(evidence.field.hypotheses.map(({ model }, h) => [model?.id ?? NONE, posterior.shares[h]!]));
}

describe('a seller who copies another model’s whole list, against the enumeration of the joint distribution', () => {
  it('every share is the enumerated one', () =>
    fc.assert(
      fc.property(worlds, (world) => {
        const shares = computed(world);
        const ways = [...priors(world).keys()].map((id): [string, number] => [id, joint(world, id)]);
        const whole = ways.reduce((sum, [, way]) => sum + way, 0);
        for (const [id, way] of ways) expect(shares.get(id)).toBeCloseTo(way / whole, 9);
      }),
      { numRuns: 100 },
    ));
});
