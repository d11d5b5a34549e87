import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { compile } from '../../src/engine';
import { factList } from '../../src/pack/facts';
import type { Pack } from '../../src/pack/schema/index';
import type { When } from '../../src/pack/schema/models';
import { numberInTable } from '../../src/pack/serial-form';
import { isFound, isMeant, marketPages, ofStanding } from './market';
import { packOf } from './packs';

/** What the invented packs must hold for the demonstration and the tests to be worth something. */
const machines = packOf('fixtures/packs/grindlewade-circle.json');
const typewriters = packOf('fixtures/packs/platen-circle.json');

interface Run {
  first: number;
  last: number;
  models: string[];
}

function runsByScheme({ serials }: Pack): Map<string, Run[]> {
  const schemes = new Map(serials!.schemes.map((scheme) => [scheme.id, scheme]));
  const out = new Map<string, Run[]>();
  const { scheme, first, last, models } = serials!.runs;
  scheme.forEach((id, i) => {
    const of = schemes.get(id)!;
    const run = { first: numberInTable(of, first[i]!)!, last: numberInTable(of, last[i]!)!, models: models[i]! };
    out.set(id, [...(out.get(id) ?? []), run]);
  });
  return out;
}

const isInside = (inner: Run, outer: Run): boolean =>
  inner !== outer &&
  inner.first >= outer.first &&
  inner.last <= outer.last &&
  inner.last - inner.first < outer.last - outer.first;

/** Numbers between the first and the last run of a scheme that none of them holds. */
function gapsOf(runs: readonly Run[]): number {
  const sorted = [...runs].sort((a, b) => a.first - b.first);
  let end = sorted[0]!.last;
  let gaps = 0;
  for (const { first, last } of sorted) {
    if (first > end + 1) gaps++;
    end = Math.max(end, last);
  }
  return gaps;
}

function conditionsOf({ models = [] }: Pack): When[] {
  return models.flatMap(({ facts = {}, variants = [] }) => [
    ...variants.map(({ when }) => when),
    ...Object.values(facts).flatMap((fact) => factList(fact).flatMap(({ when }) => when ?? [])),
  ]);
}

describe('the pack of machines', () => {
  const runs = [...runsByScheme(machines).values()];

  it('has 300 runs or more', () => expect(runs.flat().length).toBeGreaterThanOrEqual(300));
  it('has batches that models share', () => expect(runs.flat().some(({ models }) => models.length > 1)).toBe(true));
  it('has runs nested in others', () =>
    expect(runs.some((list) => list.some((inner) => list.some((outer) => isInside(inner, outer))))).toBe(true));
  it('has gaps', () => expect(runs.map(gapsOf).some((gaps) => gaps > 0)).toBe(true));
  it('has variants, and facts under each kind of condition', () => {
    expect(machines.models!.some(({ variants = [] }) => variants.length > 0)).toBe(true);
    const kinds = new Set(conditionsOf(machines).flatMap((when) => Object.keys(when)));
    expect([...kinds].sort()).toEqual(['made', 'places', 'serials']);
  });
  it('has look-alikes, both ways', () => {
    const pairs = machines.models!.flatMap(({ id, mistakenFor = [] }) => mistakenFor.map(({ model }) => [id, model]));
    expect(pairs.some(([a, b]) => pairs.some(([c, d]) => a === d && b === c))).toBe(true);
  });
});

describe('the measures of this test', () => {
  const run = (first: number, last: number): Run => ({ first, last, models: ['m'] });
  it('tell a nested run from one beside, and a gap from none', () => {
    expect(isInside(run(2, 3), run(1, 9))).toBe(true);
    expect(isInside(run(1, 9), run(1, 9))).toBe(false);
    expect(isInside(run(8, 12), run(1, 9))).toBe(false);
    expect(gapsOf([run(1, 9), run(2, 3), run(10, 12)])).toBe(0);
    expect(gapsOf([run(10, 12), run(1, 8)])).toBe(1);
  });
});

describe('the pack of a second trade', () => {
  const pages = marketPages(compile([typewriters])).filter(({ expected }) =>
    expected.packs?.includes(typewriters.about.id),
  );

  it('stands alone: it extends no pack and brings its own attributes', () => {
    expect(typewriters.about.extends).toBeUndefined();
    expect(typewriters.attributes!.length).toBeGreaterThanOrEqual(10);
  });

  it('has five pages or more', () => expect(pages.length).toBeGreaterThanOrEqual(5));

  it.each(pages)('is enough for its pages by itself: $name', (page) => {
    expect(page.result.kind).toBe(page.expected.kind);
    expect(page.result.claimedModel).toBe(page.expected.claimedModel);
    expect(page.expected.disproved.filter((wanted) => !isFound(ofStanding(page, 'disproved'), wanted))).toEqual([]);
    const wrong = ofStanding(page, 'disproved').filter(
      (finding) => !page.expected.disproved.some((wanted) => isMeant(finding, wanted)),
    );
    expect(wrong).toEqual([]);
  });

  it('needs no line of code: no check and no reader knows one of its attributes by name', () => {
    const shared = new Set(packOf('src/pack/shipped/trade.json').attributes!.map(({ id }) => id));
    const own = typewriters.attributes!.map(({ id }) => id).filter((id) => !shared.has(id));
    const named = new RegExp(`(['"\`])(?:${own.join('|')})\\1`);
    expect(named.test("attribute === 'ribbon'")).toBe(true);
    const files = ['claims', 'identify', 'price', 'audit', 'pack'].flatMap((room) =>
      readdirSync(new URL(`../../src/${room}/`, import.meta.url), { recursive: true, encoding: 'utf8' })
        .filter((file) => file.endsWith('.ts'))
        .map((file) => `src/${room}/${file}`),
    );
    expect(files.length).toBeGreaterThan(50);
    expect(files.filter((file) => named.test(readFileSync(new URL(`../../${file}`, import.meta.url), 'utf8')))).toEqual(
      [],
    );
  });
});
